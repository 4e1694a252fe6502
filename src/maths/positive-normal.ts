import type { Chance } from './chance.ts';

/**
 * A draw from a normal distribution that is cut off below 0: by rejection from the normal where 0
 * lies low, from a shifted exponential where it lies in the upper tail (`robert:1995`).
 *
 * @param mean of the normal before it is cut
 * @param sd of the same, above 0
 */
export function positiveNormal(random: Chance, mean: number, sd: number): number {
  const low = -mean / sd;
  if (low < 0.5) {
    for (;;) {
      const z = random.normal();
      if (z > low) return mean + sd * z;
    }
  }
  const rate = (low + Math.sqrt(low * low + 4)) / 2;
  for (;;) {
    const z = low - Math.log(random.uniform()) / rate;
    if (Math.log(random.uniform()) < -((z - rate) ** 2) / 2) return mean + sd * z;
  }
}
