import type { Measured } from './chart.ts';
import { ciede2000, type Lab } from './ciede2000.ts';

/** How far a measured colour lies from a reference. */
export interface Difference {
  /** CIEDE2000. */
  readonly dE00: number;
  /** Its standard deviation from the doubt of the measurement, the correction's included. */
  readonly sd: number;
  /** What the doubt alone would show on average, were there no difference: read `dE00` against it. */
  readonly byChance: number;
}

/**
 * CIEDE2000 of a measured colour to a reference, with the doubt of the measurement carried through
 * its slope (L, a and b taken as independent). Near nothing a difference cannot be negative, so
 * chance alone shows `byChance`; a small difference says no more than that.
 */
export function differenceFrom({ lab, sd }: Measured, reference: Lab): Difference {
  const dE00 = ciede2000(lab, reference);
  let [variance, square] = [0, 0];
  for (const i of [0, 1, 2] as const) {
    const up = moved(lab, i, sd[i]);
    const down = moved(lab, i, -sd[i]);
    variance += ((ciede2000(up, reference) - ciede2000(down, reference)) / 2) ** 2;
    square += ciede2000(up, lab) ** 2;
  }
  return { dE00, sd: Math.sqrt(variance), byChance: Math.sqrt(square) };
}

function moved(lab: Lab, i: 0 | 1 | 2, by: number): Lab {
  const next = [...lab] as [number, number, number];
  next[i] += by;
  return next;
}
