import { expect, it } from 'vitest';
import type { BenchCopy, BenchFace, BenchMark } from '../../contract/index.ts';
import { besideRows } from './besideRows.ts';
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

it('sets what was measured on two pictures side by side, with the doubt of the difference', () => {
  const framed = (left: number, sd: number): BenchFace => ({
    ...face([mark('scratch'), mark('dent', 'rejected')]),
    frame: {
      corners: face([]).outline?.corners ?? [],
      ...{ borders: { left, right: 3, top: 3, bottom: 3 }, rotation: 0, rotationSd: 0.1 },
      bordersSd: { left: sd, right: 0.02, top: 0.02, bottom: 0.02 },
      ...{ leftRight: [50, 50], topBottom: [50, 50], sd: [1, 1], byHand: false },
    } as BenchFace['frame'],
  });
  const rows = besideRows(framed(3.1, 0.03), framed(3.4, 0.04));
  expect(rows[0]).toEqual({
    ...{ what: 'left border', now: '3.10 ± 0.06 mm', other: '3.40 ± 0.08 mm' },
    ...{ difference: '−0.30 ± 0.10 mm', apart: true },
  });
  expect(rows.filter(({ apart }) => apart)).toHaveLength(1);
  expect(rows.at(-1)).toMatchObject({ what: 'marks held for true', now: '1', other: '1' });
  // A size that was only told is no measurement, and what one picture lacks is not compared.
  expect(besideRows(framed(3, 0.1), face([])).map(({ what }) => what)).toEqual([
    'marks held for true',
  ]);
});
