import { describe, expect, it } from 'vitest';
import type { Defect } from '../defects.ts';
import type { FaceAnswer } from '../examine/types.ts';
import type { Annotation } from '../marks/annotation.ts';
import { outlineByHand } from '../outline/by-hand.ts';
import { reportOf, type Told } from './report.ts';

const outline = outlineByHand(
  { width: 700, height: 900 },
  [
    [0, 0],
    [630, 0],
    [630, 880],
    [0, 880],
  ],
  { sizeMm: [63, 88], dpi: null },
);
const crease: Defect = {
  kind: 'crease',
  centreMm: [20, 20],
  boxMm: [10, 19, 30, 21],
  areaMm2: 4,
  lengthMm: 20,
  polygonMm: [],
  p: 0.95,
  sd: { centreMm: 0.1, areaMm2: null, lengthMm: 0.5 },
  seenFrom: 'still',
};
const face = (defects: readonly Defect[]): FaceAnswer => ({
  outline,
  hypotheses: [outline],
  trouble: null,
  size: { mm: [63, 88], sdMm: null, from: 'told' },
  frame: null,
  defects,
  limits: [],
  tipRadiusMm: 3,
  rim: null,
  looks: ['photo'],
  whyNot: null,
});
const rejecting: Annotation = {
  '@context': 'http://www.w3.org/ns/anno.jsonld',
  id: 'urn:uuid:2',
  type: 'Annotation',
  motivation: 'assessing',
  created: '2026-06-18T20:30:00+03:00',
  body: [
    { type: 'TextualBody', purpose: 'tagging', value: 'crease' },
    { type: 'TextualBody', purpose: 'classifying', value: 'rejected' },
  ],
  target: {
    source: 'desk/photos/hare-1/front.jpg',
    selector: {
      type: 'SvgSelector',
      value: '<svg><polygon points="190,190 210,190 210,210 190,210"/></svg>',
    },
  },
};
const told = (over: Partial<Told> = {}): Told => ({
  annotations: { front: [], back: [] },
  listing: 'Near mint.',
  words: [],
  setting: null,
  ...over,
});
const worst = (p: readonly number[]) => p.slice(0, 5).reduce((a, b) => a + b, 0);

describe('the report on a copy', () => {
  const faces = { front: face([crease]), back: null };

  it('holds the seller’s words against what was measured', () => {
    const { described } = reportOf(faces, told());
    expect(described?.compared).toContainEqual(
      expect.objectContaining({ measure: 'crease', says: 'disagrees', words: 'Near mint' }),
    );
    expect(reportOf(faces, told({ listing: '' })).described).toBeNull();
  });

  it('takes a hand’s word over the machine’s, in the grade and beside the listing', () => {
    const before = reportOf(faces, told());
    const after = reportOf(faces, told({ annotations: { front: [rejecting], back: [] } }));
    expect(after.marks.front[0]).toMatchObject({ state: 'rejected', defect: crease });
    expect(worst(after.grade.p)).toBeLessThan(worst(before.grade.p));
    expect(after.described?.compared.map(({ says }) => says)).not.toContain('disagrees');
  });

  it('reads words as the collector means them', () => {
    const words = [{ words: 'near mint', side: null, measure: 'crease', atMost: 40 }] as const;
    const { described } = reportOf(faces, told({ words }));
    expect(described?.compared.map(({ says }) => says)).not.toContain('disagrees');
  });
});
