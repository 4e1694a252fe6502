import { describe, expect, it } from 'vitest';
import {
  FRAME_RATE,
  type Laid,
  laidOver,
  plannedCut,
  timelineOf,
} from '../../src/chronicle/index.ts';
import { TWO } from './scripts.ts';

/**
 * Fields of each class of OpenTimelineIO 0.18 that an edit uses, from its published *Serialized
 * Data (Fields Only)*; the schema's own version stands in each name.
 */
const ITEM = ['effects', 'enabled', 'markers', 'metadata', 'name', 'source_range'];
const MEDIA = ['available_image_bounds', 'available_range', 'metadata', 'name'];
const FIELDS: Readonly<Record<string, readonly string[]>> = {
  'Timeline.1': ['global_start_time', 'metadata', 'name', 'tracks'],
  'Stack.1': [...ITEM, 'children'],
  'Track.1': [...ITEM, 'children', 'kind'],
  'Clip.2': [...ITEM, 'active_media_reference_key', 'media_references'],
  'Gap.1': ITEM,
  'Marker.2': ['color', 'comment', 'marked_range', 'metadata', 'name'],
  'ExternalReference.1': [...MEDIA, 'target_url'],
  'MissingReference.1': MEDIA,
  'TimeRange.1': ['duration', 'start_time'],
  'RationalTime.1': ['rate', 'value'],
};

interface Node {
  readonly OTIO_SCHEMA: string;
  readonly name: string;
  readonly children: readonly Node[];
  readonly markers: readonly Node[];
  readonly tracks: Node;
  readonly source_range: Range;
  readonly marked_range: Range;
  readonly media_references: Readonly<Record<string, Node & { readonly target_url: string }>>;
}
interface Range {
  readonly start_time: { readonly value: number };
  readonly duration: { readonly value: number };
}

/** Every object with a schema in a value, however deep. */
function objectsIn(value: unknown): readonly Record<string, unknown>[] {
  if (Array.isArray(value)) return value.flatMap(objectsIn);
  if (typeof value !== 'object' || value === null) return [];
  const own = 'OTIO_SCHEMA' in value ? [value as Record<string, unknown>] : [];
  return [...own, ...Object.values(value).flatMap(objectsIn)];
}

const cut = plannedCut(TWO);
const pictures: readonly Laid[] = cut.takes
  .filter((_, i) => i % 2 === 0)
  .map(({ line, from, to }) => ({ name: line.id, file: `stills/wide/${line.id} é.png`, from, to }));
const written = JSON.stringify(
  timelineOf({ cut, recording: 'take 1.mov', tracks: [{ name: 'Overlays', pictures }] }),
);
const timeline: Node = JSON.parse(written);
const length = Math.round(cut.length * FRAME_RATE);

describe('the edit as OpenTimelineIO', () => {
  it('has the fields of the published schema and no others', () => {
    const objects = objectsIn(timeline);
    expect(objects.length).toBeGreaterThan(40);
    for (const { OTIO_SCHEMA, ...fields } of objects) {
      expect(Object.keys(fields).sort()).toEqual([...(FIELDS[String(OTIO_SCHEMA)] ?? [])].sort());
    }
  });

  it('fills every track to the last frame, in whole frames at one rate', () => {
    for (const { children } of timeline.tracks.children) {
      const durations = children.map(({ source_range }) => source_range.duration.value);
      expect(durations.reduce((sum, value) => sum + value, 0)).toBe(length);
      expect(durations.every((value) => Number.isInteger(value) && value > 0)).toBe(true);
    }
    const rates = objectsIn(timeline).flatMap(({ OTIO_SCHEMA, rate }) =>
      OTIO_SCHEMA === 'RationalTime.1' ? [rate] : [],
    );
    expect(new Set(rates)).toEqual(new Set([FRAME_RATE]));
  });

  it('lays each picture at its time', () => {
    let at = 0;
    const laid = timeline.tracks.children[1]?.children.flatMap(({ name, source_range }) => {
      const from = at;
      at += source_range.duration.value;
      return name === '' ? [] : [[name, from / FRAME_RATE, at / FRAME_RATE]];
    });
    const wanted = pictures.map(({ name, from, to }) => [name, near(from), near(to)]);
    expect(laid).toEqual(wanted);
  });

  it('takes the recording a chapter at a time, and marks where each begins', () => {
    const [one, two] = timeline.tracks.children[0]?.children ?? [];
    expect(one?.source_range.start_time.value).toBe(0);
    expect(two?.source_range.start_time.value).toBe(one?.source_range.duration.value);
    expect(timeline.tracks.markers.map((marker) => marker.marked_range.start_time.value)).toEqual([
      0,
      two?.source_range.start_time.value,
    ]);
  });

  it('names files by relative addresses with their letters encoded', () => {
    const urls = timeline.tracks.children.flatMap(({ children }) =>
      children.flatMap((one) => one.media_references?.DEFAULT_MEDIA?.target_url ?? []),
    );
    expect(urls[0]).toBe('take%201.mov');
    expect(urls.at(-1)).toBe('stills/wide/two.2%20%C3%A9.png');
  });

  it('lays an overlay at the beginning of its scene, and its stills behind it', () => {
    const files = ['wide/one-title', 'wide/one-more-title', 'tall/one-title', 'wide/one-place'];
    const [stills, overlays] = laidOver(
      cut,
      [...files.map((name) => `stills/${name}.png`), 'overlays/wide/one-lower-third.png'],
      'wide',
    );
    const first = cut.takes[0]!.from;
    const last = cut.takes[2]!.to;
    const middle = first + 8 + (last - first - 8) / 2;
    expect(overlays?.pictures.map(({ from, to }) => [from, to])).toEqual([[first, first + 8]]);
    expect(stills?.pictures.map(({ name, from, to }) => [name, from, to])).toEqual([
      ['one-title', first + 8, middle],
      ['one-place', middle, last],
    ]);
  });

  it('keeps the place of a recording that is yet to be made', () => {
    const empty = JSON.stringify(timelineOf({ cut, recording: null, tracks: [] }));
    expect(empty).toContain('"MissingReference.1"');
    expect(empty).not.toContain('ExternalReference');
  });
});

/** A time at the nearest frame. */
function near(seconds: number): number {
  return Math.round(seconds * FRAME_RATE) / FRAME_RATE;
}
