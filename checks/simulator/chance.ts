/** Seeded chance for simulations; every draw follows from the seed alone. */
export interface Chance {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** Uniform within a range. */
  within(range: readonly [low: number, high: number]): number;
  /** Whole number from low to high, both included. */
  whole(low: number, high: number): number;
  /** True with probability p. */
  yes(p: number): boolean;
  normal(mean?: number, sd?: number): number;
  gamma(shape: number): number;
  beta(a: number, b: number): number;
  pick<T>(items: readonly T[]): T;
  /** An index, with probability in proportion to its weight. */
  weighted(weights: readonly number[]): number;
  shuffle<T>(items: readonly T[]): T[];
}

/** A generator of 32-bit numbers, sfc32 (Doty-Humphrey, PractRand), seeded by a whole number. */
function bits(seed: number): () => number {
  let a = seed | 0;
  let b = Math.floor(seed / 2 ** 32) | 0;
  let c = 0x9e3779b9 | 0;
  let n = 1;
  const next = () => {
    const t = (((a + b) | 0) + n) | 0;
    n = (n + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + t) | 0;
    return t >>> 0;
  };
  for (let i = 0; i < 16; i++) next();
  return next;
}

/** Chance from a whole number; throws RangeError for anything else. */
export function seeded(seed: number): Chance {
  if (!Number.isSafeInteger(seed)) throw new RangeError(`seed must be a whole number, got ${seed}`);
  const next = bits(seed);
  const uniform = () => (next() * 2 ** 21 + (next() >>> 11)) / 2 ** 53;
  const normal = (mean = 0, sd = 1) =>
    mean + sd * Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const gamma = (shape: number): number => {
    if (shape < 1) return gamma(shape + 1) * (1 - uniform()) ** (1 / shape);
    return marsaglia(shape - 1 / 3, normal, uniform);
  };
  return {
    uniform,
    normal,
    gamma,
    between: (low, high) => low + (high - low) * uniform(),
    within: ([low, high]) => low + (high - low) * uniform(),
    whole: (low, high) => low + Math.floor((high - low + 1) * uniform()),
    yes: (p) => uniform() < p,
    beta(a, b) {
      const x = gamma(a);
      const y = gamma(b);
      return x + y > 0 ? x / (x + y) : 0.5;
    },
    pick(items) {
      if (items.length === 0) throw new RangeError('nothing to pick from');
      return items[Math.floor(items.length * uniform())]!;
    },
    weighted: (weights) => weightedIndex(weights, uniform()),
    shuffle: (items) => shuffled(items, uniform),
  };
}

/** Gamma draw of shape at least 1 by Marsaglia and Tsang (`marsaglia:2000`); d is shape − 1/3. */
function marsaglia(d: number, normal: () => number, uniform: () => number): number {
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

function weightedIndex(weights: readonly number[], u: number): number {
  const total = weights.reduce((sum, w) => sum + w, 0);
  if (!(total > 0)) throw new RangeError('weights must add up to more than zero');
  let left = u * total;
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i]!;
    if (left < 0) return i;
  }
  return weights.length - 1;
}

function shuffled<T>(items: readonly T[], uniform: () => number): T[] {
  const all = [...items];
  for (let i = all.length - 1; i > 0; i--) {
    const j = Math.floor((i + 1) * uniform());
    [all[i], all[j]] = [all[j]!, all[i]!];
  }
  return all;
}
