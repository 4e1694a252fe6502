import { describe, expect, it } from 'vitest';
import { type Known, whyLow } from './low.ts';

/** A printing of which nothing is out of the ordinary. */
const usual: Known = {
  graded: 100,
  offeredRaw: 40,
  offeredGraded: 20,
  odds: 1,
  made: 10_000,
  price: 20,
};
const unknown = { offeredRaw: 0, offeredGraded: 0, odds: undefined, made: undefined };
const pOf = (one: Partial<Known>) =>
  whyLow([usual, usual, usual, { ...usual, ...one }])[3]?.p_few_exist ?? Number.NaN;

const density = (x: number, mean: number, sd: number) => Math.exp(-0.5 * ((x - mean) / sd) ** 2);

/**
 * The same probability by summing over a fine line of the log of copies that exist (the log of the
 * share sent in is what is left of the shortfall), with every piece of evidence as a density of its
 * own: Bayes' rule written out, the judgements of the method copied from docs/methods/population.md.
 */
function summed(one: Known): number {
  const shortfall = Math.log(one.graded / usual.graded);
  const logOdds = (of: Known) => Math.log((of.offeredGraded + 0.5) / (of.offeredRaw + 0.5));
  const noise = Math.sqrt(1 / (one.offeredRaw + 0.5) + 1 / (one.offeredGraded + 0.5));
  let few = 0;
  let all = 0;
  for (let exists = -8; exists <= 8; exists += 0.0005) {
    const sent = shortfall - exists;
    let weight = density(exists, 0, 0.9) * density(sent, 0, 0.7);
    if (one.odds !== undefined) weight *= density(Math.log(one.odds / 1), exists, 1);
    if (one.made !== undefined) weight *= density(Math.log(one.made / 10_000), exists, 0.5);
    if (one.price !== undefined) weight *= density(Math.log(one.price / 20), -0.5 * exists, 0.8);
    if (one.offeredRaw + one.offeredGraded > 0)
      weight *= density(logOdds(one) - logOdds(usual), sent, noise);
    all += weight;
    if (exists < shortfall / 2) few += weight;
  }
  return few / all;
}

describe('why a population is low', () => {
  // The line's step makes up 1e-4.
  it.each<Partial<Known>>([
    { ...unknown, price: undefined },
    { odds: 0.25 },
    { made: 2_000, price: 55 },
    { offeredRaw: 60, offeredGraded: 3 },
    { offeredRaw: 2, offeredGraded: 9, price: 11, made: undefined },
  ])('agrees with the sum over what may be behind it: %o', (over) => {
    const one = { ...usual, graded: 22, ...over };
    expect(pOf(one)).toBeCloseTo(summed(one), 3);
  });

  it('is taken for few copies the rarer, the dearer and the less made it is', () => {
    const low = { graded: 20, ...unknown, price: undefined };
    for (const more of [{ odds: 0.1 }, { made: 1_000 }, { price: 90 }])
      expect(pOf({ ...low, ...more })).toBeGreaterThan(pOf(low) + 0.02);
    expect(pOf({ ...low, offeredRaw: 90, offeredGraded: 2 })).toBeLessThan(pOf(low) - 0.2);
  });

  it('is told of no printing that is not low, and of none among two', () => {
    expect(whyLow([usual, usual, usual, usual])).toEqual([null, null, null, null]);
    expect(whyLow([usual, { ...usual, graded: 3 }])).toEqual([null, null]);
  });
});
