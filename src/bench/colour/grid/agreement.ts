import { choleskyOf, logRootOf, solveByFactor } from '../../../maths/index.ts';
import type { Three } from '../spaces.ts';

/** What a picture shows where a patch should be, and what the chart says of it. */
export interface Shown {
  /** Root of the light seen, red, green and blue. */
  readonly seen: Three;
  /** Root of the light that the chart's colour has. */
  readonly told: Three;
  /** Place from the middle of the picture, half its longer side 1. */
  readonly at: readonly [x: number, y: number];
}

/** How well readings agree with the chart's colours under some camera and lamp. */
export interface Agreement {
  /** Logarithm of the ratio: these are those patches, against colours that have nothing to do with them. */
  readonly logRatio: number;
  /** For each reading, the probability that it shows its patch. */
  readonly shows: readonly number[];
}

/** What one plain mixing of channels leaves, in roots of light. Judgement, no source. */
const SPREAD = 0.045;

/** Share of patches that may be covered, dirty or in glare. Judgement, no source. */
const ASTRAY = 0.15;

/**
 * Beforehand, of a channel told by those seen: a constant, its own gain, the two others' share, and
 * the light's ramp across and down; mean and deviation. Judgement, no source.
 */
const BELIEVED = {
  mean: [0, 1, 0, 0, 0, 0],
  sd: [0.06, 0.35, 0.2, 0.2, 0.2, 0.2],
} as const;

/**
 * The marginal likelihood of the chart's colours given the readings, camera and lamp integrated out
 * (Bayesian linear regression in closed form, `bishop:2006`, 3.5), over that of colours drawn from
 * the chart's own spread. Readings that do not fit count as astray, found by weights that tighten
 * round by round, so that up to half of them may.
 */
export function agreementOf(shown: readonly Shown[], spreadOfChart: ChartSpread): Agreement {
  const plain = shown.map((one) => spreadOfChart.logDensity(one.told));
  let weights = shown.map(() => 1);
  let fits = [0, 1, 2].map(() => BELIEVED.mean as readonly number[]);
  for (const width of [0.3, 0.2, 0.12, 0.08, SPREAD, SPREAD, SPREAD]) {
    weights = shown.map((one) => {
      const off = offOf(one, fits);
      return 1 / (1 + (off / (2 * width)) ** 2) ** 2;
    });
    fits = ([0, 1, 2] as const).map((c) => regressed(shown, c, weights).values);
  }
  const shows = shown.map((one, k) => {
    const right = Math.log(1 - ASTRAY) + logNormal(offOf(one, fits));
    const astray = Math.log(ASTRAY) + (plain[k] as number);
    return 1 / (1 + Math.exp(astray - right));
  });
  const sure = shows.map((p) => (p > 0.5 ? 1 : 0));
  const evidence = ([0, 1, 2] as const).reduce<number>(
    (sum, c) => sum + regressed(shown, c, sure).logEvidence,
    0,
  );
  let logRatio = evidence;
  sure.forEach((one, k) => {
    logRatio += one ? Math.log(1 - ASTRAY) - (plain[k] as number) : Math.log(ASTRAY);
  });
  return { logRatio, shows };
}

/** How the colours of a chart are spread, as a normal distribution of three roots of light. */
export interface ChartSpread {
  logDensity(told: Three): number;
}

/** The spread of a chart's colours. */
export function spreadOf(told: readonly Three[]): ChartSpread {
  const n = told.length;
  const mean = [0, 1, 2].map((c) => told.reduce((sum, one) => sum + (one[c] as number), 0) / n);
  const entry = (i: number, j: number) =>
    told.reduce(
      (sum, one) =>
        sum +
        ((one[i] as number) - (mean[i] as number)) * ((one[j] as number) - (mean[j] as number)),
      0,
    ) /
      n +
    (i === j ? SPREAD ** 2 : 0);
  const lower = choleskyOf(
    [0, 1, 2].flatMap((i) => [0, 1, 2].map((j) => entry(i, j))),
    3,
  );
  const logRoot = logRootOf(lower, 3);
  return {
    logDensity(one) {
      const off = one.map((value, c) => value - (mean[c] as number));
      const scaled = Float64Array.from(off);
      solveByFactor(lower, scaled, 3);
      const square = dot(off, scaled);
      return -1.5 * Math.log(2 * Math.PI) - logRoot - square / 2;
    },
  };
}

function rowOf({ seen, at }: Shown, c: 0 | 1 | 2): readonly number[] {
  const own = seen[c];
  return [
    1,
    own,
    seen[(c + 1) % 3] as number,
    seen[(c + 2) % 3] as number,
    at[0] * own,
    at[1] * own,
  ];
}

function offOf(one: Shown, fits: readonly (readonly number[])[]): number {
  let square = 0;
  for (const c of [0, 1, 2] as const) {
    const row = rowOf(one, c);
    const told = row.reduce((sum, value, k) => sum + value * (fits[c]?.[k] as number), 0);
    square += (told - one.told[c]) ** 2;
  }
  return Math.sqrt(square);
}

function logNormal(off: number): number {
  return -1.5 * Math.log(2 * Math.PI) - 3 * Math.log(SPREAD) - (off / SPREAD) ** 2 / 2;
}

/** Weighted regression under the beliefs, with the logarithm of its evidence (for weights of 0 and 1). */
function regressed(shown: readonly Shown[], c: 0 | 1 | 2, weights: readonly number[]) {
  const { mean, sd } = BELIEVED;
  const size = mean.length;
  // In units of the beliefs' deviations, about their means.
  const square = new Float64Array(size * size);
  for (let i = 0; i < square.length; i += size + 1) square[i] = 1;
  const right = new Array<number>(size).fill(0);
  let [rest, count] = [0, 0];
  shown.forEach((one, k) => {
    const weight = (weights[k] as number) / SPREAD ** 2;
    if (weight === 0) return;
    const row = rowOf(one, c);
    const off = one.told[c] - row.reduce((sum, value, i) => sum + value * (mean[i] as number), 0);
    const scaled = row.map((value, i) => value * (sd[i] as number));
    rest += weight * off * off;
    count += weights[k] as number;
    scaled.forEach((a, i) => {
      right[i] = (right[i] as number) + weight * a * off;
      for (let j = 0; j < size; j++)
        square[i * size + j] =
          (square[i * size + j] as number) + weight * a * (scaled[j] as number);
    });
  });
  const lower = choleskyOf(square, size);
  const step = Float64Array.from(right);
  solveByFactor(lower, step, size);
  const logRoot = logRootOf(lower, size);
  const explained = dot(right, step);
  const perPatch = Math.log(SPREAD) + 0.5 * Math.log(2 * Math.PI);
  return {
    values: mean.map((value, i) => value + (sd[i] as number) * (step[i] as number)),
    logEvidence: -count * perPatch - logRoot - (rest - explained) / 2,
  };
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}
