import { describe, expect, it } from 'vitest';
import { pricesOf } from '../../src/market/index.ts';
import { priceWorld } from './price-world.ts';

/** How often the next sales of a world fall inside their interval. */
function held(hard: 0 | 1 | 2, seed: number): number {
  const { ground, next } = priceWorld({ printings: 14, sales: 300, hard }, seed);
  const { of } = pricesOf(ground);
  const inside = next.filter(({ printings, service, grade, price }) => {
    const told = of
      .get(printings[0] as string)
      ?.find((one) => one.service === service && one.grade === grade);
    const [low, high] = told?.interval80 ?? [0, 0];
    return price >= low && price <= high;
  });
  return inside.length / next.length;
}

describe('80 % intervals of prices', () => {
  // Six worlds of 400 sales to come; worlds differ by about 0.045 (standard deviation), so their
  // mean is known to 0.018. Measured 0.82 easy, 0.79 medium, 0.80 hard over 8 worlds each.
  it('hold the next sale as often as they say, over worlds drawn over a wide range', () => {
    const worlds = [0, 1, 2].flatMap((hard) =>
      [11, 12].map((seed) => held(hard as 0 | 1 | 2, seed)),
    );
    const mean = worlds.reduce((a, b) => a + b, 0) / worlds.length;
    expect(mean).toBeGreaterThan(0.74);
    expect(mean).toBeLessThan(0.86);
  }, 60_000);
});
