import { medianOf } from '../../maths/index.ts';
import type { Places } from './places.ts';
import { type BySide, bySide, SIDES, type SideLine } from './sides.ts';

/** The four lines of a print that is turned as one, with the doubt about them. */
export interface PrintFit {
  readonly lines: BySide<SideLine>;
  /** Standard error of each depth in millimetres. */
  readonly depthSd: BySide<number>;
  readonly slopeSd: number;
  /** Robust scatter of single places about the line, in millimetres. */
  readonly scatter: BySide<number>;
  /** Share of the places that lie on the line. */
  readonly kept: BySide<number>;
}

const ROUNDS = 10;
/** Tukey's biweight leaves out what lies so many scatters off: 95 % efficiency for normal errors. */
const TUKEY = 4.685;
/** Least scatter of a place in millimetres, so that a perfect picture does not divide by nothing. */
const LEAST_SCATTER = 0.001;
/** Variance is this much larger than that of free places: neighbouring columns err together. */
const CORRELATED = 2;
/** Standard deviation of one side's own slope about the print's, as its outline may be off. */
const OWN_SLOPE = 3e-4;

/** Weighted sums over one side's places about its line. */
interface Sums {
  readonly weight: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly spread: number;
  readonly mixed: number;
  readonly kept: number;
  readonly scatter: number;
}

/** Fits four depths and one slope to the places on four sides, by Tukey's weights (`beaton:1974`). */
export function printFitOf(places: BySide<Places>): PrintFit {
  let depths = bySide((side) => medianOf(places[side].off));
  let slope = 0;
  let sums = bySide((side) => sumsOf(places[side], depths[side], slope));
  for (let round = 0; round < ROUNDS; round++) {
    slope = slopeOf(sums).slope;
    depths = bySide((side) => sums[side].meanY - slope * sums[side].meanX);
    sums = bySide((side) => sumsOf(places[side], depths[side], slope));
  }
  const slopeSd = slopeOf(sums).sd;
  return {
    lines: bySide((side) => ({
      depth: places[side].line.depth + depths[side],
      slope: places[side].line.slope + slope,
    })),
    depthSd: bySide((side) => depthSdOf(sums[side], slopeSd)),
    slopeSd,
    scatter: bySide((side) => sums[side].scatter),
    kept: bySide((side) => sums[side].kept),
  };
}

function sumsOf({ along, off }: Places, depth: number, slope: number): Sums {
  const residuals = off.map((y, i) => y - depth - slope * (along[i] as number));
  const scatter = Math.max(LEAST_SCATTER, 1.4826 * medianOf(residuals.map(Math.abs)));
  let [w, wx, wy, wxx, wxy, kept] = [0, 0, 0, 0, 0, 0];
  for (let i = 0; i < off.length; i++) {
    const u = (residuals[i] as number) / (TUKEY * scatter);
    if (Math.abs(u) >= 1) continue;
    const weight = (1 - u * u) ** 2 / (scatter * scatter);
    const [x, y] = [along[i] as number, off[i] as number];
    w += weight;
    wx += weight * x;
    wy += weight * y;
    wxx += weight * x * x;
    wxy += weight * x * y;
    kept++;
  }
  const [meanX, meanY] = [wx / w, wy / w];
  return {
    weight: w,
    meanX,
    meanY,
    spread: wxx - wx * meanX,
    mixed: wxy - wx * meanY,
    kept: kept / off.length,
    scatter,
  };
}

/** The print's slope, each side's own counted by how well it is known. */
function slopeOf(sums: BySide<Sums>): { slope: number; sd: number } {
  let [weight, sum] = [0, 0];
  for (const side of SIDES) {
    const { spread, mixed } = sums[side];
    if (!(spread > 0)) continue;
    const own = 1 / (CORRELATED / spread + OWN_SLOPE ** 2);
    weight += own;
    sum += (own * mixed) / spread;
  }
  return { slope: sum / weight, sd: Math.sqrt(1 / weight) };
}

function depthSdOf({ weight, meanX }: Sums, slopeSd: number): number {
  return Math.sqrt(CORRELATED / weight + meanX ** 2 * (slopeSd ** 2 + OWN_SLOPE ** 2));
}
