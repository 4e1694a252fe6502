import { chaptersOf } from '../chapters.ts';
import type { Cut } from '../types.ts';

/** Frames a second of the edit. */
export const FRAME_RATE = 30;

/** A picture over a stretch of the film. */
export interface Laid {
  readonly name: string;
  /** Where the picture lies, relative to the timeline's own folder, `/` between folders. */
  readonly file: string;
  /** Seconds. */
  readonly from: number;
  readonly to: number;
}

/** A recording and what is laid over it. */
export interface Edit {
  readonly cut: Cut;
  /** File of the recording; null where none was made yet, and its place is kept. */
  readonly recording: string | null;
  /** Tracks from below: pictures that fill the frame, overlays; pictures of a track do not overlap. */
  readonly tracks: readonly { readonly name: string; readonly pictures: readonly Laid[] }[];
}

/**
 * The edit as OpenTimelineIO JSON (`otio:2025`): the recording below, a clip a chapter, with what is
 * laid over it above, and a marker where each chapter begins. Times are whole frames.
 */
export function timelineOf({ cut, recording, tracks }: Edit): object {
  const length = framesIn(cut.length);
  const chapters = chaptersOf(cut);
  const takes = chapters.map(({ id, title, from, to }) => {
    const range = rangeOf(framesIn(from), framesIn(to));
    const media = recording === null ? missing() : external(recording, rangeOf(0, length));
    return clip(title, range, media, { scene: id });
  });
  const markers = chapters.map(({ title, from }) => ({
    OTIO_SCHEMA: 'Marker.2',
    name: title,
    color: 'CYAN',
    comment: '',
    marked_range: rangeOf(framesIn(from), framesIn(from)),
    metadata: {},
  }));
  return {
    OTIO_SCHEMA: 'Timeline.1',
    name: cut.script.title,
    global_start_time: null,
    metadata: { printlore: { as_of: cut.script.asOf, language: cut.script.language } },
    tracks: {
      ...item('Stack.1', 'tracks', null),
      markers,
      children: [
        track('Recording', takes),
        ...tracks.map(({ name, pictures }) => track(name, laidOut(pictures, length))),
      ],
    },
  };
}

/** Pictures with gaps between them, so that each comes at its time. */
function laidOut(pictures: readonly Laid[], length: number): object[] {
  const children: object[] = [];
  let at = 0;
  for (const { name, file, from, to } of pictures) {
    const [start, end] = [framesIn(from), framesIn(to)];
    if (start > at) children.push(item('Gap.1', '', rangeOf(0, start - at)));
    const range = rangeOf(0, end - start);
    children.push(clip(name, range, external(file, range), {}));
    at = end;
  }
  if (length > at) children.push(item('Gap.1', '', rangeOf(0, length - at)));
  return children;
}

function track(name: string, children: readonly object[]): object {
  return { ...item('Track.1', name, null), kind: 'Video', children };
}

function clip(name: string, range: object, media: object, told: object): object {
  return {
    ...item('Clip.2', name, range),
    metadata: { printlore: told },
    media_references: { DEFAULT_MEDIA: media },
    active_media_reference_key: 'DEFAULT_MEDIA',
  };
}

function item(schema: string, name: string, range: object | null): object {
  return {
    OTIO_SCHEMA: schema,
    name,
    source_range: range,
    effects: [],
    markers: [],
    enabled: true,
    metadata: {},
  };
}

function external(file: string, range: object): object {
  const url = file.split('/').map(encodeURIComponent).join('/');
  return {
    OTIO_SCHEMA: 'ExternalReference.1',
    name: '',
    target_url: url,
    available_range: range,
    available_image_bounds: null,
    metadata: {},
  };
}

function missing(): object {
  return {
    OTIO_SCHEMA: 'MissingReference.1',
    name: '',
    available_range: null,
    available_image_bounds: null,
    metadata: {},
  };
}

function rangeOf(from: number, to: number): object {
  return { OTIO_SCHEMA: 'TimeRange.1', start_time: frames(from), duration: frames(to - from) };
}

function frames(value: number): object {
  return { OTIO_SCHEMA: 'RationalTime.1', rate: FRAME_RATE, value };
}

function framesIn(seconds: number): number {
  return Math.round(seconds * FRAME_RATE);
}
