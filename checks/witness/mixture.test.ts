// Small mixtures of claims, as fully enumerated in R 4.2.2 (fixtures/mixture/claims.json says how).
// The enumeration in TypeScript is held against R here, so that it may judge other cases.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { enumerateDays, enumerateReliability, type MixtureClaim } from './mixture-enumerated.ts';

interface Fixture {
  readonly cases: readonly {
    readonly description: string;
    readonly window_days: number;
    readonly input: readonly MixtureClaim[];
    readonly evidence: number;
    readonly posterior: readonly number[];
  }[];
  readonly joint_unknown_reliability: readonly {
    readonly description: string;
    readonly claims_items_by_sources: readonly (readonly number[])[];
    readonly mean_r?: readonly number[];
    readonly mean_r1?: number;
    readonly mean_r2?: number;
    readonly item_posteriors: readonly (readonly number[])[];
  }[];
}
const file = new URL('../fixtures/mixture/claims.json', import.meta.url);
const fixture = JSON.parse(readFileSync(file, 'utf8')) as Fixture;

describe('one event', () => {
  it.each(fixture.cases.map((one) => [one.description, one] as const))('%s', (text, one) => {
    const rising = text.startsWith('triangular prior');
    const prior = Array.from({ length: one.window_days }, (_, d) => (rising ? d + 1 : 1));
    const { posterior, evidence } = enumerateDays(one.input, prior);
    // 13 significant digits in the fixture.
    expect(evidence / one.evidence).toBeCloseTo(1, 11);
    one.posterior.forEach((p, d) => {
      expect(posterior[d]).toBeCloseTo(p, 11);
    });
  });
});

describe('events that share sources of unknown reliability', () => {
  const grid = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((n) => n / 10);
  const cases = fixture.joint_unknown_reliability;
  it.each(cases.map((one) => [one.description, one] as const))('%s', (_, one) => {
    const found = enumerateReliability(one.claims_items_by_sources, 5, grid);
    one.item_posteriors.forEach((row, i) => {
      row.forEach((p, d) => {
        expect(found.items[i]![d]).toBeCloseTo(p, 11);
      });
    });
    const means = one.mean_r ?? [one.mean_r1!, one.mean_r2!];
    means.forEach((mean, s) => {
      expect(found.means[s]).toBeCloseTo(mean, 11);
    });
  });
});
