import type { Chance } from '../../src/maths/index.ts';
import { ARTS, artOf } from './art.ts';
import type { Print } from './print.ts';

/** Angle sets in use: C, M, Y, K (`iso:12647-2`, sets in use by common practice) and a turned one. */
const SETS = [
  [15, 75, 0, 45],
  [75, 15, 0, 45],
  [15, 45, 0, 75],
  [45, 75, 0, 15],
  [75, 45, 0, 15],
  [22.5, 52.5, 7.5, 82.5],
  [7.5, 67.5, 82.5, 37.5],
] as const;

/** An invented print with everything drawn over wide ranges. */
export function inventedPrint(
  chance: Chance,
  process: Print['process'],
  size: number,
  fixed: Partial<Print> = {},
): Print {
  const pick = <T>(list: readonly T[]) => list[chance.below(list.length)] as T;
  const between = (low: number, high: number) => low + (high - low) * chance.uniform();
  const dpi = fixed.dpi ?? 1200;
  const lpi = between(120, 200);
  const own = chance.uniform() < 0.3;
  return {
    size,
    dpi,
    process,
    screens: pick(SETS).map((angleDeg) => ({
      lpi: own ? lpi * between(0.975, 1.025) : lpi,
      angleDeg,
    })),
    spot: pick(['round', 'euclidean', 'elliptical', 'diamond'] as const),
    scanTurnDeg: between(-4, 4),
    shiftsMm: [0, 1, 2, 3].map(() => [between(-0.05, 0.05), between(-0.05, 0.05)] as const),
    inks: INKS_USUAL.map(
      (ink) => ink.map((t) => t ** between(0.8, 1.25)) as [number, number, number],
    ),
    paper: [between(0.8, 0.95), between(0.8, 0.93), between(0.7, 0.9)],
    blurPx: between(0.4, 0.8),
    noise: between(0.5, 2.5),
    art: artOf(pick(ARTS), (size / dpi) * 25.4, chance),
    ...fixed,
  };
}

/** Light that cyan, magenta, yellow and black let through. Judgement, no source. */
const INKS_USUAL = [
  [0.12, 0.5, 0.78],
  [0.68, 0.1, 0.3],
  [0.9, 0.8, 0.12],
  [0.06, 0.06, 0.065],
] as const;
