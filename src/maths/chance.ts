/** Seeded chance: one seed gives the same numbers on every machine. */
export interface Chance {
  /** Uniform on the open interval (0, 1). */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
  /** Gamma with the given shape (> 0) and scale 1. */
  gamma(shape: number): number;
  /** A whole number from 0 to n - 1. */
  below(n: number): number;
}

/**
 * A source of chance from a seed: the small fast counter generator sfc32 (
 * `doty-humphrey:2010`), normals by Marsaglia's polar method (`marsaglia:1964`), gammas by
 * Marsaglia and Tsang (`marsaglia:2000`). Not for secrets.
 *
 * @param seed any whole number
 */
export function chance(seed: number): Chance {
  if (!Number.isSafeInteger(seed))
    throw new RangeError(`chance requires a whole seed, not ${seed}`);
  const uniform = sfc32(seed);
  const normal = polar(uniform);
  return {
    uniform,
    normal,
    gamma: (shape) => gammaOf(shape, uniform, normal),
    below: (n) => Math.floor(uniform() * n),
  };
}

function sfc32(seed: number): () => number {
  let a = seed | 0;
  let b = Math.floor(seed / 4_294_967_296) | 0;
  let c = 0x9e3779b9 | 0;
  let counter = 1;
  const next = () => {
    const t = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + t) | 0;
    return ((t >>> 0) + 0.5) / 4_294_967_296;
  };
  for (let i = 0; i < 15; i++) next();
  return next;
}

function polar(uniform: () => number): () => number {
  let spare = Number.NaN;
  return () => {
    if (!Number.isNaN(spare)) {
      const value = spare;
      spare = Number.NaN;
      return value;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s >= 1 || s === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * scale;
      return u * scale;
    }
  };
}

function gammaOf(shape: number, uniform: () => number, normal: () => number): number {
  if (!(shape > 0)) throw new RangeError(`gamma requires a shape above 0, not ${shape}`);
  if (shape < 1) return gammaOf(shape + 1, uniform, normal) * uniform() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

/**
 * A draw from a Dirichlet distribution, written into `out`.
 *
 * @param concentrations one number above 0 for each share
 */
export function dirichlet(
  random: Chance,
  concentrations: ArrayLike<number>,
  out: Float64Array,
): void {
  let sum = 0;
  for (let i = 0; i < out.length; i++) {
    out[i] = random.gamma(concentrations[i]!) + 1e-300;
    sum += out[i]!;
  }
  for (let i = 0; i < out.length; i++) out[i]! /= sum;
}

/** The index drawn in proportion to non-negative weights; `total` is their sum. */
export function pick(
  random: Chance,
  weights: ArrayLike<number>,
  total: number,
  length = weights.length,
): number {
  let left = random.uniform() * total;
  for (let i = 0; i < length; i++) {
    left -= weights[i]!;
    if (left < 0) return i;
  }
  return length - 1;
}

/** The index drawn in proportion to weights that are given by their logs; overwrites `logs`. */
export function pickLog(random: Chance, logs: Float64Array): number {
  const most = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  let total = 0;
  for (let i = 0; i < logs.length; i++) {
    logs[i] = Math.exp(logs[i]! - most);
    total += logs[i]!;
  }
  return pick(random, logs, total);
}
