import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Defect } from '../defects.ts';
import type { FaceAnswer } from '../examine/types.ts';
import { signsOf } from './signs.ts';
import { swappedBackSign } from './swapped-back.ts';
import { type Across, trimmedSign } from './trimmed.ts';

const CASES: readonly {
  offMm: number;
  sdMm: number;
  borderDifference: number | null;
  log10Lr: number;
}[] = JSON.parse(readFileSync('checks/fixtures/bench/trimmed_ratio.json', 'utf8'));
const NOMINAL = [63, 88] as const;
const whole: Across = { mm: 88, sdMm: 0.05, borderDifference: null };

describe('a trimmed edge', () => {
  it.each(CASES)('agrees with the integral written out: $offMm mm', (one) => {
    const across = { mm: 63 + one.offMm, sdMm: one.sdMm, borderDifference: one.borderDifference };
    const [width] = trimmedSign([across, whole], NOMINAL, []).findings;
    // The fixture has five decimals, the code sixty steps: measured 1.1e-5, allowed 5e-5.
    expect(Math.abs((width?.log10Lr ?? 9) - one.log10Lr)).toBeLessThan(5e-5);
  });

  const small: Across = { mm: 62.3, sdMm: 0.06, borderDifference: 0.6 };

  it('takes back what other copies explain that are as small, and names both explanations', () => {
    const alone = trimmedSign([small, whole], NOMINAL, []);
    const among = trimmedSign([small, whole], NOMINAL, [
      [62.3, 88],
      [62.35, 88.02],
      [62.28, 87.97],
    ]);
    expect(alone.log10Lr).toBeGreaterThan(0);
    expect(among.log10Lr).toBeLessThan(0);
    expect(alone.cautions.length).toBe(among.cautions.length + 1);
    for (const explanation of alone.between) expect(alone.words).toContain(explanation);
    expect(alone.words).not.toMatch(/genuine|fake/i);
  });

  it('is the same mirrored, and says less where the size is less sure', () => {
    const of = (across: Partial<Across>) =>
      trimmedSign([{ ...small, ...across }, whole], NOMINAL, []).log10Lr;
    expect(of({ borderDifference: -0.6 })).toBeCloseTo(of({}), 9);
    expect(Math.abs(of({ sdMm: 0.5 }))).toBeLessThan(Math.abs(of({})));
  });
});

const worn = (x: number, y: number): Defect => ({
  kind: 'corner-wear',
  centreMm: [x, y],
  boxMm: [x, y, x, y],
  areaMm2: 1,
  lengthMm: 1,
  polygonMm: [],
  p: 0.95,
  sd: { centreMm: 0.05, areaMm2: 0.1, lengthMm: 0.2 },
  seenFrom: 'still',
});
const face = (part: Partial<FaceAnswer>): FaceAnswer => ({
  outline: null,
  hypotheses: [],
  trouble: null,
  size: { mm: NOMINAL, sdMm: [0.06, 0.09], from: 'dpi' },
  frame: null,
  defects: [],
  limits: [{ kinds: ['corner-wear', 'edge-wear'], where: 'along the edges', mm: 0.3 }],
  tipRadiusMm: 3,
  rim: null,
  looks: [],
  whyNot: null,
  ...part,
});
const ratioOf = (front: Partial<FaceAnswer>, back: Partial<FaceAnswer>) =>
  swappedBackSign(face(front), face(back))?.log10Lr ?? Number.NaN;

describe('a back that was joined to another front', () => {
  it('is not spoken for by faces that agree, and is by another radius or size', () => {
    expect(ratioOf({}, {})).toBeLessThan(-0.3);
    expect(ratioOf({}, { tipRadiusMm: 2.1 })).toBeGreaterThan(ratioOf({}, {}) + 1);
    const size = { mm: [62.2, 88] as const, sdMm: [0.06, 0.09] as const, from: 'dpi' as const };
    expect(ratioOf({}, { size })).toBeGreaterThan(ratioOf({}, {}) + 1);
  });

  it('looks for a worn corner where it lies seen from behind', () => {
    const front = { defects: [worn(1, 1)] };
    const same = ratioOf(front, { defects: [worn(62, 1)] });
    const other = ratioOf(front, { defects: [worn(1, 1)] });
    expect(same).toBeLessThan(other);
  });

  it('says nothing where nothing can be compared', () => {
    const none = { tipRadiusMm: null, size: null, limits: [] };
    expect(swappedBackSign(face(none), face(none))).toBeNull();
  });
});

it('looks for a cut only where a scan was measured beside a size that was told', () => {
  const kinds = (front: FaceAnswer, sizeMm: typeof NOMINAL | null) =>
    signsOf(front, null, { sizeMm }).map(({ of }) => of);
  expect(kinds(face({}), NOMINAL)).toEqual(['trimmed']);
  expect(kinds(face({}), null)).toEqual([]);
  expect(kinds(face({ size: { mm: NOMINAL, sdMm: null, from: 'told' } }), NOMINAL)).toEqual([]);
});
