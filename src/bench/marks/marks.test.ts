import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Defect } from '../defects.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import { type Annotation, selectorOf, shapeOf } from './annotation.ts';
import { marksOf, weighedMarks } from './marks.ts';

// Ten pixels a millimetre, straight down.
const map = cardMapOf(
  [
    [0, 0],
    [630, 0],
    [630, 880],
    [0, 880],
  ],
  [63, 88],
  { k1: 0, width: 700, height: 900 },
);

const measured = (kind: Defect['kind'], x: number, y: number): Defect => ({
  kind,
  centreMm: [x, y],
  boxMm: [x - 1, y - 1, x + 1, y + 1],
  areaMm2: 1,
  lengthMm: null,
  polygonMm: [],
  p: 0.6,
  sd: { centreMm: 0.1, areaMm2: null, lengthMm: null },
  seenFrom: 'still',
});

const annotation = (
  kind: string,
  points: readonly (readonly [number, number])[],
  over: Partial<Annotation> = {},
  closed = true,
): Annotation => ({
  '@context': 'http://www.w3.org/ns/anno.jsonld',
  id: 'urn:uuid:1',
  type: 'Annotation',
  motivation: 'tagging',
  created: '2026-06-18T20:30:00+03:00',
  body: [
    { type: 'TextualBody', purpose: 'tagging', value: kind },
    { type: 'TextualBody', purpose: 'commenting', value: 'by the loupe' },
  ],
  target: { source: 'desk/photos/hare-1/front.jpg', selector: selectorOf({ points, closed }) },
  ...over,
});

const judging = (word: string): Partial<Annotation> => ({
  motivation: 'assessing',
  body: [
    { type: 'TextualBody', purpose: 'tagging', value: 'stain' },
    { type: 'TextualBody', purpose: 'classifying', value: word },
  ],
});

const square = [
  [100, 100],
  [120, 100],
  [120, 130],
  [100, 130],
] as const;

describe('a place in a picture', () => {
  it('is written and read again', () => {
    const coordinate = fc.integer({ min: 0, max: 9_999_999 }).map((n) => n / 100);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate), { minLength: 2 }),
        fc.boolean(),
        (points, closed) => {
          expect(shapeOf(selectorOf({ points, closed }))).toEqual({ points, closed });
        },
      ),
    );
  });

  it('may be a rectangle that counts from the rim of the first pixel', () => {
    // W3C Media Fragments 1.0, 4.2.2: xywh=160,120,320,240 is a box of 320 × 240 at (160, 120).
    const shape = shapeOf({ type: 'FragmentSelector', value: 'xywh=pixel:160,120,320,240' });
    expect(shape?.points[0]).toEqual([159.5, 119.5]);
    expect(shape?.points[2]).toEqual([479.5, 359.5]);
  });

  it.each([
    '',
    'xywh=percent:1,2,3,4',
    'xywh=1,2,3',
    '<svg><circle r="2"/></svg>',
    '<polygon points="1,2 3"/>',
  ])('is none in “%s”', (value) => {
    expect(shapeOf({ type: 'SvgSelector', value })).toBeUndefined();
    expect(shapeOf({ type: 'FragmentSelector', value })).toBeUndefined();
  });
});

describe('marks of a face', () => {
  it('added by hand have their size in millimetres', () => {
    const [area] = marksOf([], [annotation('stain', square)], map);
    expect(area?.defect.areaMm2).toBeCloseTo(6, 9);
    expect(area?.defect.centreMm[0]).toBeCloseTo(11, 9);
    expect(area).toMatchObject({ from: 'hand', state: 'confirmed', words: ['by the loupe'] });
    const line = annotation('scratch', square.slice(0, 3), {}, false);
    expect(marksOf([], [line], map)[0]?.defect.lengthMm).toBeCloseTo(5, 9);
  });

  it('that were measured stay, with a hand’s word beside them', () => {
    const near = measured('stain', 11.5, 11.5);
    const marks = marksOf(
      [near, measured('stain', 30, 30), measured('dent', 11, 11)],
      [annotation('stain', square, judging('rejected'))],
      map,
    );
    expect(marks.map(({ state }) => state)).toEqual(['rejected', 'open', 'open']);
    expect(marks[0]?.defect).toBe(near);
    expect(weighedMarks(marks).map(({ p }) => p)).toEqual([0.6, 0.6]);
  });

  it('are sure once a hand confirmed them, and the last word counts', () => {
    const words = ['rejected', 'confirmed'].map((word) =>
      annotation('stain', square, judging(word)),
    );
    const marks = marksOf([measured('stain', 11, 11)], words, map);
    expect(weighedMarks(marks)).toMatchObject([{ p: 1 }]);
  });

  it('of no known kind, or nowhere, are left out', () => {
    expect(marksOf([], [annotation('coffee', square)], map)).toEqual([]);
  });
});
