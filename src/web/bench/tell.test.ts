import { expect, it } from 'vitest';
import type { BenchCopy, BenchFace, BenchMark } from '../../contract/index.ts';
import { sayFound, sayLeft, sayLimits, whereOn } from './tell.ts';

const mark = (kind: string, state: BenchMark['state'] = 'open'): BenchMark => ({
  ...{ from: 'machine', state, kind, centre: [10, 10], box: [9, 9, 11, 11], area: 1, length: null },
  ...{ polygon: [], p: 0.9, seenFrom: 'still', words: [], annotations: [] },
});

const face = (marks: BenchMark[], p = 0.99): BenchFace => ({
  ...{ picture: 'front.jpg', width: 700, height: 900, size: null, frame: null, marks },
  outline: {
    ...{ p, byHand: false },
    corners: [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
  },
  ...{ limits: [], looks: [], whyNot: null },
});

const copy = (front: BenchFace | null, described: BenchCopy['described'] = null): BenchCopy => ({
  ...{
    id: 'one',
    printing: 'first',
    status: 'arrived',
    bought: '',
    listing: '',
    pictures: [],
    beside: [],
  },
  ...{ front, back: null, described, grade: null, clock: { open: [], unclear: [] } },
});

it('tells what was found and what differs from the words, the deciding ones marked', () => {
  const described: BenchCopy['described'] = {
    compared: [
      {
        ...{ words: 'near mint', from: 0, to: 9, side: 'front', measure: 'scratch', unit: 'mm' },
        ...{ atMost: 1, found: { mean: 14, sd: 1 }, pMore: 0.99, says: 'disagrees', named: [] },
      },
    ],
    unseen: [],
    silent: false,
  };
  const marks = [mark('scratch'), mark('scratch'), mark('dent'), mark('speck', 'rejected')];
  expect(sayFound(copy(face(marks), described))).toBe(
    'Two scratches and a dent on the front. *“near mint” and the scratch of the front disagree*, by the words list that you keep.',
  );
});

it('promises nothing where the outline is not sure or nothing is there', () => {
  expect(sayFound(copy(face([], 0.3)))).toContain('*not sure*');
  expect(sayFound(copy(null))).toBe('Nothing was measured yet.');
  expect(sayFound(copy(face([])))).toContain('No mark was found.');
});

it('says how far down the picture could have shown more, and nothing where it cannot say', () => {
  const limits = [{ kinds: ['corner-wear', 'edge-wear'], where: 'along the edges', mm: 0.2537 }];
  expect(sayLimits({ ...face([]), limits })).toBe(
    'Nothing else that this picture could show: corner wear or edge wear along the edges down to 0.25 mm.',
  );
  expect(sayLimits(face([]))).toBeNull();
});

it.each([
  [12, '12 days left'],
  [1, '1 day left'],
  [0, 'ends today'],
  [-2, 'passed 2 days ago'],
])('%d days are told as %s', (left, words) => expect(sayLeft(left)).toBe(words));

it('names places on the card as they are seen', () => {
  expect(whereOn([60, 2], [63, 88])).toBe('upper right');
  expect(whereOn([31, 44], [63, 88])).toBe('middle');
});
