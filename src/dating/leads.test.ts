import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectedGain, leadsFor, trustByKind } from './leads.ts';
import type { DayWeights } from './spread.ts';

const flat = (n: number): DayWeights => ({
  days: Int32Array.from({ length: n }, (_, j) => j),
  p: new Float64Array(n).fill(1 / n),
});

/** Mutual information in bits from the joint table of day and claim, as Shannon defines it. */
function mutualInformation(joint: readonly (readonly number[])[]): number {
  const rows = joint.map((row) => row.reduce((a, b) => a + b, 0));
  const columns = joint[0]!.map((_, c) => joint.reduce((sum, row) => sum + row[c]!, 0));
  let bits = 0;
  joint.forEach((row, r) => {
    row.forEach((p, c) => {
      if (p > 0) bits += p * Math.log2(p / (rows[r]! * columns[c]!));
    });
  });
  return bits;
}

/** Claim: the true day with `trust`; else half the time a day by the distribution, half "unheard of". */
function jointOf(p: readonly number[], trust: number): number[][] {
  const lost = (1 - trust) / 2;
  return p.map((day, d) => [
    ...p.map((other, v) => day * (lost * other + (v === d ? trust : 0))),
    day * lost,
  ]);
}

const weights = fc
  .array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 9 })
  .map((list) => {
    const total = list.reduce((a, b) => a + b, 0);
    return list.map((w) => w / total);
  });

describe('expected information', () => {
  it('is the mutual information of day and claim', () => {
    fc.assert(
      fc.property(weights, fc.double({ min: 0, max: 1, noNaN: true }), (p, trust) => {
        const spread = { days: Int32Array.from(p, (_, j) => j), p: Float64Array.from(p) };
        // Differences of sums of at most ninety logarithms: rounding only.
        expect(expectedGain(spread, trust)).toBeCloseTo(mutualInformation(jointOf(p, trust)), 10);
      }),
      { seed: 6, numRuns: 300 },
    );
  });

  it('is all the doubt where the source is always right, and none where there is no doubt', () => {
    expect(expectedGain(flat(8), 1)).toBeCloseTo(3, 12);
    expect(expectedGain(flat(1), 0.8)).toBeCloseTo(0, 12);
    expect(expectedGain(flat(8), 0)).toBeCloseTo(0, 12);
  });
});

describe('leads', () => {
  const trust = trustByKind(
    { printings: [], products: [], contents: [], sources: [], claims: [], orders: [] },
    [],
  );

  it('are the two that tell most, kinds already heard left out', () => {
    const leads = leadsFor('first', flat(16), new Set(['publisher-database']), trust);
    expect(leads.map(({ kind }) => kind)).toEqual(['press-release', 'store-listing']);
    expect(leads[0]!.gain_bits).toBeGreaterThan(leads[1]!.gain_bits);
  });

  it('are none where nothing is in doubt', () => {
    expect(leadsFor('first', flat(1), new Set(), trust)).toEqual([]);
  });
});
