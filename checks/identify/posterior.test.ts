import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type CounterfeitKind,
  identify,
  isLook,
  type Known,
  type Reading,
  readValue,
  type TraitRow,
} from '../../src/catalogue/index.ts';

/** Made by `checks/makers/identify/posterior.py`, which enumerates how readings come about. */
const { world, cases, gains } = JSON.parse(
  readFileSync(new URL('../fixtures/identify/posterior.json', import.meta.url), 'utf8'),
) as {
  world: {
    printings: string[];
    counterfeits: CounterfeitKind[];
    about: Record<string, number>;
    traits: Record<string, [string, Record<string, string | [number, number] | null>]>;
  };
  cases: { name: string; readings: Said[]; p: Record<string, number> }[];
  gains: { readings: Said[]; trait: string; bits: number }[];
};
type Said = [trait: string, value: string | number, look: string];

function valueIn(text: string) {
  const reading = readValue(text);
  if (!reading.ok) throw new Error(reading.expected);
  return reading.value;
}

const lookOf = (text: string) => (isLook(text) ? text : null);

const traits = Object.entries(world.traits).flatMap(([trait, [sees, values]]) =>
  Object.entries(values).flatMap(([id, value]): readonly TraitRow[] => {
    if (value === null) return [];
    const text = typeof value === 'string' ? value : `${value[0]}±${value[1]} g`;
    return [
      { of: [id], trait, value: valueIn(text), sees: lookOf(sees), region: '', publish: true },
    ];
  }),
);

const known: Known = {
  printings: world.printings.map((id) => ({ id })),
  counterfeits: world.counterfeits,
  traits,
  about: new Map(Object.entries(world.about)),
  others: [],
};

const seen = (said: readonly Said[]) => ({
  named: [],
  readings: said.map(([trait, value, look]): Reading => {
    const text = typeof value === 'string' ? value : `${value.toFixed(2)} g`;
    return { trait, value: valueIn(text), sees: lookOf(look), sd: null };
  }),
});

describe('the probability of each printing, by an enumeration in Python', () => {
  it.each(cases)('$name', ({ readings, p }) => {
    const { candidates, unlisted } = identify(known, seen(readings));
    const found = { ...Object.fromEntries(candidates.map((one) => [one.id, one.p])), unlisted };
    expect(Object.keys(found).sort()).toEqual(Object.keys(p).sort());
    for (const [id, expected] of Object.entries(p)) {
      // Measured 4e-16, allowed 1e-12.
      expect(Math.abs((found as Record<string, number>)[id]! - expected)).toBeLessThan(1e-12);
    }
  });

  it.each(gains)('gain of a look at “$trait”', ({ readings, trait, bits }) => {
    const next = identify(known, seen(readings)).next.find((one) => one.trait === trait);
    // Measured 3e-16, allowed 1e-12.
    expect(Math.abs((next?.gain_bits ?? 0) - bits)).toBeLessThan(1e-12);
  });
});
