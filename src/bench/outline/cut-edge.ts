import { bellOf, cumulative } from './cumulative.ts';
import type { Profile } from './profile.ts';

/** Where the cut edge lies in a profile, after what lies beside it is taken into account. */
export interface CutEdge {
  /** Pixels outward of where the change is steepest. */
  readonly off: number;
  readonly sd: number;
}

/** What is tried: pixels of the edge, blur in pixels, width of a side face in pixels; 0 for none. */
const FROM = -2.4;
const TO = 1.2;
const STEP = 0.15;
const BLURS = [0.5, 0.6, 0.7, 0.8, 0.95, 1.1, 1.3, 1.5, 1.75, 2] as const;
const NO_FACE = [0];
const FACES = [0, 2, 2.75, 3.5, 4.5, 5.5, 7] as const;

/** Odds, before anything is seen, that a side face shows; and how far off the steepest change. */
const FACE_ODDS = 0.05;
const OFF_SD = 1;

/** Least misfit of a profile, as a share of its range and in light: no lens or code is as modelled. */
const LEAST_SHARE = 0.007;
const LEAST_MISFIT = 0.0004;

/** Samples half a pixel apart are blurred together: one in so many is free. */
const TOGETHER = 2;

const TERMS = 6;

/** Radius in pixels over which a camera's sharpening looks, which draws halos. Common practice, no source. */
const HALO = 1.5;

/**
 * The cut edges in the mean profiles across four sides. A blurred step is steepest at its place
 * where nothing lies beside it; a shadow that grows lighter outward draws that outward by slope times
 * blur squared over the step, and a side face by up to its width. So a step with a level and slope
 * inside, a bent ramp outside, a halo and a second step at a face's width is fitted by squares for
 * every edge and face that is tried, and the answer is the mean and the spread over all of them by
 * their odds. The blur is the second sharpest that the sides show as single steps. `scale` is the
 * picture's blur, 1 where it is sharp; `faceMost` the widest face in pixels.
 */
export function cutEdgesOf(
  profiles: readonly Profile[],
  scale: number,
  faceMost: number,
): readonly CutEdge[] {
  const [, blur] = profiles.map((profile) => sharpest(profile, scale)).sort((a, b) => a - b) as [
    number,
    number,
  ];
  return profiles.map((profile) => cutEdgeOf(profile, blur, scale, faceMost));
}

/** The blur at which a single step with a ramp beside it leaves least. */
function sharpest(profile: Profile, scale: number): number {
  let best = { blur: 0, squares: Number.POSITIVE_INFINITY };
  for (const blur of BLURS)
    for (let e = -1; e <= 1; e += 0.25) {
      const [squares] = misfitsOf(profile, e * scale, blur * scale, NO_FACE) as [number];
      if (squares < best.squares) best = { blur: blur * scale, squares };
    }
  return best.blur;
}

interface Trial {
  readonly e: number;
  readonly squares: number;
  readonly prior: number;
}

function cutEdgeOf(profile: Profile, blur: number, scale: number, faceMost: number): CutEdge {
  const { off, light } = profile;
  const trials: Trial[] = [];
  const faces = FACES.map((face) => face * scale).filter((face) => face <= faceMost);
  for (let e = FROM; e <= TO + 1e-9; e += STEP)
    misfitsOf(profile, e * scale, blur, faces).forEach((squares, i) => {
      const odds = faces[i] === 0 ? 1 - FACE_ODDS : FACE_ODDS / Math.max(1, faces.length - 1);
      trials.push({ e: e * scale, squares, prior: Math.log(odds) - (e / OFF_SD) ** 2 / 2 });
    });
  const range = Math.max(...light) - Math.min(...light);
  return spreadOver(trials, 3 * (off.length - TERMS - 1), LEAST_SHARE * range + LEAST_MISFIT);
}

/** Mean and spread of the edges tried, by their odds, given a least misfit of each sample. */
function spreadOver(trials: readonly Trial[], free: number, floor: number): CutEdge {
  const least = Math.min(...trials.map(({ squares }) => squares));
  const variance = least / free + floor ** 2;
  const logs = trials.map(
    ({ squares, prior }) => prior - (squares - least) / variance / TOGETHER / 2,
  );
  const most = Math.max(...logs);
  let [sum, first, second] = [0, 0, 0];
  trials.forEach(({ e }, i) => {
    const weight = Math.exp((logs[i] as number) - most);
    sum += weight;
    first += weight * e;
    second += weight * e * e;
  });
  const mean = first / sum;
  return { off: mean, sd: Math.sqrt(Math.max(0, second / sum - mean * mean)) };
}

/** Terms with that of a face, the last. */
const ALL = TERMS + 1;
const MOST_SAMPLES = 256;

/** Values of each term at every sample, one term after the other. */
const basis = new Float64Array(ALL * MOST_SAMPLES);
/** Cholesky's factor of the normal equations, and what it leaves of the right sides. */
const factor = new Float64Array(ALL * ALL);
const right = new Float64Array(3 * ALL);

/**
 * Sum of squares that is left of three channels after the best levels, slopes and steps, for each
 * width of a face; 0 is none. What the terms without a face explain is the same for all.
 */
function misfitsOf(
  { off, light }: Profile,
  edge: number,
  blur: number,
  faces: readonly number[],
): readonly number[] {
  const count = off.length;
  const halo = Math.sqrt(blur * blur + HALO * HALO);
  for (let i = 0; i < count; i++) fillBasis(i, (off[i] as number) - edge, blur, halo);
  let left = 0;
  for (let i = 0; i < 3 * count; i++) left += (light[i] as number) ** 2;
  for (let a = 0; a < TERMS; a++) left -= explainedBy(a, light, count);
  return faces.map((face) => {
    if (face === 0) return left;
    for (let i = 0; i < count; i++)
      basis[TERMS * MOST_SAMPLES + i] = cumulative(((off[i] as number) - edge - face) / blur);
    return left - explainedBy(TERMS, light, count);
  });
}

/** Level and slope of the card; step, ramp and bend outside; halo. */
function fillBasis(i: number, u: number, blur: number, halo: number): void {
  const z = u / blur;
  const bell = bellOf(z);
  const share = cumulative(z, bell);
  basis[i] = 1;
  basis[MOST_SAMPLES + i] = u / 5;
  basis[2 * MOST_SAMPLES + i] = share;
  basis[3 * MOST_SAMPLES + i] = (blur * (z * share + bell)) / 5;
  basis[4 * MOST_SAMPLES + i] = (blur * blur * ((z * z + 1) * share + z * bell)) / 25;
  basis[5 * MOST_SAMPLES + i] = share - cumulative(u / halo);
}

/** Squares that a term explains beyond those before it, by its row of Cholesky's factor (`press:2007`). */
function explainedBy(a: number, light: Float64Array, count: number): number {
  const own = a * MOST_SAMPLES;
  for (let b = 0; b <= a; b++) {
    let value = 0;
    for (let i = 0, other = b * MOST_SAMPLES; i < count; i++)
      value += (basis[own + i] as number) * (basis[other + i] as number);
    for (let k = 0; k < b; k++)
      value -= (factor[a * ALL + k] as number) * (factor[b * ALL + k] as number);
    factor[a * ALL + b] =
      a === b ? Math.sqrt(Math.max(value, 1e-9)) : value / (factor[b * ALL + b] as number);
  }
  let sum = 0;
  for (let c = 0; c < 3; c++) {
    let value = 0;
    for (let i = 0; i < count; i++)
      value += (basis[own + i] as number) * (light[3 * i + c] as number);
    for (let k = 0; k < a; k++)
      value -= (factor[a * ALL + k] as number) * (right[3 * k + c] as number);
    value /= factor[a * ALL + a] as number;
    right[3 * a + c] = value;
    sum += value * value;
  }
  return sum;
}
