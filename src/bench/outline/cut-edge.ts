import { cumulative } from './cumulative.ts';
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
function sharpest({ off, light }: Profile, scale: number): number {
  let best = { blur: 0, squares: Number.POSITIVE_INFINITY };
  for (const blur of BLURS)
    for (let e = -1; e <= 1; e += 0.25) {
      const squares = misfitOf(off, light, e * scale, blur * scale, 0);
      if (squares < best.squares) best = { blur: blur * scale, squares };
    }
  return best.blur;
}

interface Trial {
  readonly e: number;
  readonly squares: number;
  readonly prior: number;
}

function cutEdgeOf(
  { off, light }: Profile,
  blur: number,
  scale: number,
  faceMost: number,
): CutEdge {
  const trials: Trial[] = [];
  const faces = FACES.filter((face) => face * scale <= faceMost);
  for (const face of faces)
    for (let e = FROM; e <= TO + 1e-9; e += STEP) {
      const odds = face === 0 ? 1 - FACE_ODDS : FACE_ODDS / Math.max(1, faces.length - 1);
      const prior = Math.log(odds) - (e / OFF_SD) ** 2 / 2;
      const squares = misfitOf(off, light, e * scale, blur, face * scale);
      trials.push({ e: e * scale, squares, prior });
    }
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

const basis = new Float64Array(TERMS + 1);
const normal = new Float64Array((TERMS + 1) ** 2);
const right = new Float64Array(3 * (TERMS + 1));

/** Sum of squares that is left of three channels after the best levels, slopes and steps. */
function misfitOf(
  off: Float64Array,
  light: Float64Array,
  edge: number,
  blur: number,
  face: number,
): number {
  const n = face > 0 ? TERMS + 1 : TERMS;
  normal.fill(0);
  right.fill(0);
  const halo = Math.sqrt(blur * blur + HALO * HALO);
  let total = 0;
  for (let i = 0; i < off.length; i++) {
    fillBasis((off[i] as number) - edge, blur, halo, face);
    for (let a = 0; a < n; a++) {
      const own = basis[a] as number;
      for (let b = 0; b <= a; b++)
        normal[a * n + b] = (normal[a * n + b] as number) + own * (basis[b] as number);
      for (let c = 0; c < 3; c++)
        right[3 * a + c] = (right[3 * a + c] as number) + own * (light[3 * i + c] as number);
    }
    for (let c = 0; c < 3; c++) total += (light[3 * i + c] as number) ** 2;
  }
  return total - explained(n);
}

/** Level and slope of the card; step, ramp and bend outside; halo; step at a face's outer edge. */
function fillBasis(u: number, blur: number, halo: number, face: number): void {
  const z = u / blur;
  const share = cumulative(z);
  const bell = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  basis[0] = 1;
  basis[1] = u / 5;
  basis[2] = share;
  basis[3] = (blur * (z * share + bell)) / 5;
  basis[4] = (blur * blur * ((z * z + 1) * share + z * bell)) / 25;
  basis[5] = share - cumulative(u / halo);
  basis[6] = face > 0 ? cumulative((u - face) / blur) : 0;
}

/** Squares that the terms explain, by Cholesky's factor of the normal equations (`press:2007`). */
function explained(n: number): number {
  let sum = 0;
  for (let a = 0; a < n; a++) {
    for (let b = 0; b <= a; b++) {
      let value = normal[a * n + b] as number;
      for (let k = 0; k < b; k++)
        value -= (normal[a * n + k] as number) * (normal[b * n + k] as number);
      if (a === b) normal[a * n + a] = Math.sqrt(Math.max(value, 1e-9));
      else normal[a * n + b] = value / (normal[b * n + b] as number);
    }
    for (let c = 0; c < 3; c++) {
      let value = right[3 * a + c] as number;
      for (let k = 0; k < a; k++)
        value -= (normal[a * n + k] as number) * (right[3 * k + c] as number);
      right[3 * a + c] = value / (normal[a * n + a] as number);
      sum += (right[3 * a + c] as number) ** 2;
    }
  }
  return sum;
}
