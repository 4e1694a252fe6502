import type { PointPx } from '../geometry/points.ts';
import type { Knot } from './line-track.ts';
import type { Field } from './slope-field.ts';

/** A line's section as a Gaussian ridge or groove, mm. */
export interface Section {
  /** Above 0 for a ridge, below 0 for a groove. */
  readonly height: number;
  readonly heightSd: number;
  /** Width at half the height. */
  readonly width: number;
  readonly widthSd: number;
}

/** Width at half height of a Gaussian of one. */
const HALF_WIDTH = 2.3548;
/** Widths tried, mm, each so many times the one before. */
const NARROWEST = 0.14;
const WIDEST = 3.5;
const RATIO = 1.06;
/** Share of a height by which the model of light errs, and slope that print may feign (Judgement, no source). */
const MODEL_SHARE = 0.1;
const SLOPE_ERROR = 0.004;

/**
 * Height and width of the ridge along a line, by weighted least squares over all blocks beside it,
 * a block's own width and a pixel's blur counted in. The height's standard error comes from how it
 * scatters along the line, the width's from how fast the fit worsens beside the best.
 */
export function sectionOf(field: Field, knots: readonly Knot[], perMm: number): Section {
  const blocks = besideOf(field, knots, perMm);
  let best = { width: NARROWEST, height: 0, power: 1, gain: Number.NEGATIVE_INFINITY };
  const gains: (readonly [number, number])[] = [];
  for (let width = NARROWEST; width < WIDEST; width *= RATIO) {
    const { seen, power } = unitFit(blocks, width, perMm);
    const gain = (seen * seen) / power;
    gains.push([width, gain]);
    if (gain > best.gain) best = { width, height: seen / power, power, gain };
  }
  const left = blocks.reduce((sum, { slope, weight }) => sum + slope * slope * weight, 0);
  const scatter = Math.max(1, (left - best.gain) / Math.max(blocks.length - 3, 1));
  // Blocks beside each other err alike: nine of them count as one.
  const within = gains.filter(([, gain]) => best.gain - gain < 9 * scatter).map(([w]) => w);
  const spread = Math.max(...within, best.width) - Math.min(...within, best.width);
  const heights = knots.map(({ height }) => height);
  const mean = heights.reduce((sum, value) => sum + value, 0) / heights.length;
  const along = Math.sqrt(
    heights.reduce((sum, value) => sum + (value - mean) ** 2, 0) / heights.length ** 2,
  );
  return {
    height: best.height,
    heightSd: Math.hypot(
      along,
      3 * Math.sqrt(scatter / best.power),
      MODEL_SHARE * best.height,
      SLOPE_ERROR * best.width,
    ),
    width: best.width,
    widthSd: Math.hypot(spread / 2, 0.05 * best.width, 0.03),
  };
}

interface Beside {
  /** Distance from the line, mm, and the slope away from it. */
  readonly d: number;
  readonly slope: number;
  readonly weight: number;
}

/** Blocks within two millimetres beside the line's pieces. */
function besideOf(field: Field, knots: readonly Knot[], perMm: number): readonly Beside[] {
  const { width, height, right, down, weight } = field;
  const blocks: Beside[] = [];
  const reach = 2.5 * perMm;
  for (let k = 1; k < knots.length; k++) {
    const [ax, ay] = (knots[k - 1] as Knot).at;
    const [bx, by] = (knots[k] as Knot).at;
    const length = Math.hypot(bx - ax, by - ay);
    const [wx, wy] = [(bx - ax) / length, (by - ay) / length];
    const low = (a: number, b: number) => Math.max(0, Math.floor(Math.min(a, b) - reach));
    const high = (a: number, b: number, most: number) =>
      Math.min(most - 1, Math.ceil(Math.max(a, b) + reach));
    for (let y = low(ay, by); y <= high(ay, by, height); y++)
      for (let x = low(ax, bx); x <= high(ax, bx, width); x++) {
        const along = (x - ax) * wx + (y - ay) * wy;
        if (along < 0 || along >= length) continue;
        const d = (y - ay) * wx - (x - ax) * wy;
        const i = y * width + x;
        const w = weight[i] as number;
        if (Math.abs(d) > reach || w === 0) continue;
        blocks.push({
          d: d / perMm,
          slope: ((down[i] as number) * wx - (right[i] as number) * wy) / w,
          weight: w,
        });
      }
  }
  return blocks;
}

function unitFit(blocks: readonly Beside[], width: number, perMm: number) {
  const sigma = width / HALF_WIDTH;
  const seenSigma = Math.hypot(sigma, 1 / perMm / Math.sqrt(12));
  let seen = 0;
  let power = 1e-12;
  for (const { d, slope, weight } of blocks) {
    if (Math.abs(d) > 4 * seenSigma + 0.5) continue;
    const unit =
      (sigma / seenSigma) * (-d / seenSigma ** 2) * Math.exp((-d * d) / (2 * seenSigma ** 2));
    seen += unit * slope * weight;
    power += unit * unit * weight;
  }
  return { seen, power };
}

/** Distance of a point to a line through knots, in blocks. */
export function distanceTo(knots: readonly Knot[], [x, y]: PointPx): number {
  let best = Number.POSITIVE_INFINITY;
  for (let k = 1; k < knots.length; k++) {
    const [ax, ay] = (knots[k - 1] as Knot).at;
    const [bx, by] = (knots[k] as Knot).at;
    const [dx, dy] = [bx - ax, by - ay];
    const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    best = Math.min(best, Math.hypot(x - ax - t * dx, y - ay - t * dy));
  }
  return best;
}
