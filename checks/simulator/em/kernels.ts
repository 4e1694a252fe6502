/** Probabilities of the days from release to what is stated, with running sums. */
export interface Kernel {
  readonly p: Float64Array;
  /** `sum[i]`: of all p before index i. */
  readonly sum: Float64Array;
}

/** Days either side that a kernel reaches. */
export const REACH = 2200;
const SIZE = 2 * REACH + 1;
/** What one day further away than any kernel reaches still has. */
const BEYOND = 1e-7;

/** A kernel from a weight for each number of days, which need not add up to one. */
export function kernel(weight: (days: number) => number): Kernel {
  const p = Float64Array.from({ length: SIZE }, (_, i) => weight(i - REACH));
  const total = p.reduce((sum, w) => sum + w, 0);
  return summed(p.map((w) => w / total));
}

/** Kernels added up with weights. */
export function blend(parts: readonly (readonly [number, Kernel])[]): Kernel {
  const p = new Float64Array(SIZE);
  for (const [weight, part] of parts) {
    for (let i = 0; i < SIZE; i++) p[i]! += weight * part.p[i]!;
  }
  return summed(p);
}

function summed(p: Float64Array): Kernel {
  const sum = new Float64Array(SIZE + 1);
  for (let i = 0; i < SIZE; i++) sum[i + 1] = sum[i]! + p[i]!;
  return { p, sum };
}

/** Probability that the stated day lies from `first` to `last`, as days from release. */
export function within(kernel: Kernel, first: number, last: number): number {
  if (first === last) return kernel.p[first + REACH] ?? BEYOND;
  const from = Math.min(SIZE, Math.max(0, first + REACH));
  const to = Math.min(SIZE, Math.max(0, last + REACH + 1));
  return kernel.sum[to]! - kernel.sum[from]! + BEYOND;
}

const logNormal = (days: number, scale: number, sd: number) =>
  days < 1 ? 0 : Math.exp(-((Math.log(days / scale) / sd) ** 2) / 2) / days;

export const NEXT_DAY = kernel((d) => (d === 1 ? 0.6 : d === -1 ? 0.4 : 0));
export const FEW_DAYS = kernel((d) => (d > 0 && d <= 7 ? 0.75 : d < 0 && d >= -7 ? 0.25 : 0));
export const NEAR = kernel((d) => (d === 0 ? 0 : Math.exp(-Math.abs(d) / 15)));
export const FAR = kernel((d) => (Math.abs(d) < 10 ? 0 : Math.exp(-Math.abs(d) / 220)));
const COMMON_LAGS = [1, 2, 3, 4, 5, 7, 7, 7, 10, 14, 14, 21, 28];
/** The habits of dating another moment before any claim is looked at. */
export const ANY_LAG = kernel((d) => {
  if (d === 0) return 0;
  const common = COMMON_LAGS.filter((n) => n === Math.abs(d)).length;
  const spread = Math.abs(d) <= 90 ? 1 / 60 : 0.0002;
  return (common + spread + 0.3 * Math.exp(-Math.abs(d) / 12)) * (d < 0 ? 0.65 : 0.35);
});
/** The shapes of the other properties, days from release to the value. */
export const PROPERTIES: Readonly<Record<string, Kernel>> = {
  announced: blend([
    [0.5, kernel((d) => (d === 0 ? 1 : 0))],
    [0.33, kernel((d) => logNormal(-d, 25, 1.25))],
    [0.15, kernel((d) => logNormal(d, 7, 1.2))],
    [0.02, FAR],
  ]),
  'cover-date': kernel((d) => (d >= -8 && d <= 80 ? 1 : 1e-4)),
  'copyright-year': kernel(
    (d) => ({ '0': 0.65, '-365': 0.25, '-730': 0.07, '-1095': 0.03 })[d] ?? 1e-6,
  ),
  'label-year': kernel((d) => (d === 0 ? 0.8 : d < 0 ? Math.exp(d / 200) / 1000 : 1e-6)),
  'printed-on': kernel((d) => logNormal(-d - 5, 30, 1) + 1e-6),
  'seen-by': kernel((d) => 0.96 * logNormal(d + 1, 100, 1.4) + 0.04 * logNormal(1 - d, 100, 1.4)),
  'not-before': kernel((d) => 0.96 * logNormal(1 - d, 60, 1.4) + 0.04 * logNormal(d + 1, 60, 1.4)),
  'unlisted-on': kernel((d) => 0.8 * logNormal(-d, 60, 1) + 0.2 * logNormal(d, 60, 1) + 1e-7),
  'distributed-until': kernel((d) => logNormal(d - 20, 200, 1) + 1e-7),
};
