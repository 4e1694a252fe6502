import { placed } from '../../maths/index.ts';
import { PRINT_MM } from './candidates.ts';
import type { Response } from './matched.ts';
import type { ReliefLimit } from './types.ts';

/** Depth in standard errors that a dent must have to be told with some certainty. */
const TOLD_AT = 9;

/**
 * For each width looked for, the depth that a dent needs to be told on nine tenths of the card; where
 * print is nearly black, or light falls off, more is needed.
 */
export function limitsOf(responses: readonly Response[]): readonly ReliefLimit[] {
  return responses.map(({ widthMm, sd, excess }) => {
    const known = Float64Array.from(sd.filter((value) => value > 0));
    const ninth =
      known.length > 0 ? placed(known, Math.floor(0.9 * known.length)) : Number.POSITIVE_INFINITY;
    return { diameterMm: widthMm, depthMm: TOLD_AT * Math.hypot(ninth * excess, PRINT_MM) };
  });
}
