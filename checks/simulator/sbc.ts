import { isoOf } from '../../src/evidence/index.ts';
import { seeded } from './chance.ts';
import type { Answer } from './engine.ts';
import { chiSquareTail, kolmogorovTail } from './tails.ts';

/**
 * A model whose prior can be drawn from: `draw` gives data with the days that they were made from,
 * by printing; `answer` dates the data. Both must be of one and the same model.
 */
export interface Calibrated<Data> {
  draw(seed: number): { readonly data: Data; readonly days: ReadonlyMap<string, number> };
  answer(data: Data, seed: number): Pick<Answer, 'printings'>;
}

export interface Uniformity {
  /** How many ranks fell into each of the bins of equal width. */
  readonly counts: readonly number[];
  /** Ranks between 0 and 1, one a dossier. */
  readonly ranks: readonly number[];
  /** Pearson's chi-square against equal counts, and the chance of a greater one. */
  readonly chiSquare: number;
  readonly p: number;
  /** Largest distance from the uniform distribution, and the chance of a greater one. */
  readonly distance: number;
  readonly pDistance: number;
}

/**
 * Rank of a true day in its posterior, between 0 and 1: the mass before it and, since days are
 * lumps, a random share `tie` of the mass on it. Probabilities are scaled to one, because an answer
 * leaves out the last thousandth.
 */
export function rankOf(
  days: Answer['printings'][number]['days'],
  truth: number,
  tie: number,
): number {
  const day = isoOf(truth);
  const total = days.reduce((sum, [, p]) => sum + p, 0);
  if (!(total > 0)) return tie;
  const before = days.reduce((sum, [other, p]) => (other < day ? sum + p : sum), 0);
  const on = days.find(([other]) => other === day)?.[1] ?? 0;
  return (before + tie * on) / total;
}

/**
 * Level of a true day in its posterior, between 0 and 1: the mass of the days that are more probable
 * and a random share `tie` of the mass of those that are as probable. A posterior that is too sure
 * of its best day has too many levels near 1, while its ranks are too early as often as too late.
 */
export function levelOf(
  days: Answer['printings'][number]['days'],
  truth: number,
  tie: number,
): number {
  const day = isoOf(truth);
  const total = days.reduce((sum, [, p]) => sum + p, 0);
  if (!(total > 0)) return tie;
  const own = days.find(([other]) => other === day)?.[1] ?? 0;
  const close = own * SAME;
  const above = days.reduce((sum, [, p]) => (p > own + close ? sum + p : sum), 0);
  const like = days.reduce((sum, [, p]) => (Math.abs(p - own) <= close ? sum + p : sum), 0);
  return (above + tie * like) / total;
}

/** Relative difference up to which probabilities are the same but for rounding. */
const SAME = 1e-9;

/** How the truths lie in their posteriors, by rank and by level. */
export interface Calibration {
  readonly ranks: Uniformity;
  readonly levels: Uniformity;
}

/**
 * Simulation-based calibration (`talts:2018`): over data drawn from a model's own prior the ranks
 * of the truth are uniform, and so are its levels, which depend on the data and therefore tell
 * faults that ranks do not (`modrak:2025`). One printing a dossier, drawn at random, so that ranks
 * are independent. Says nothing on data from anywhere else. Throws RangeError for fewer than five
 * dossiers a bin, where the chi-square test is not to be trusted.
 */
export function calibrate<Data>(
  model: Calibrated<Data>,
  dossiers: number,
  seed: number,
  bins = 20,
): Calibration {
  if (dossiers < 5 * bins) throw new RangeError(`at least ${5 * bins} dossiers for ${bins} bins`);
  const chance = seeded(seed);
  const places = Array.from({ length: dossiers }, (_, i) => {
    const own = seed * 1_000_003 + i;
    const { data, days } = model.draw(own);
    const dated = chance.pick(model.answer(data, own).printings);
    const truth = days.get(dated.id)!;
    return {
      rank: rankOf(dated.days, truth, chance.uniform()),
      level: levelOf(dated.days, truth, chance.uniform()),
    };
  });
  return {
    ranks: uniformity(
      places.map(({ rank }) => rank),
      bins,
    ),
    levels: uniformity(
      places.map(({ level }) => level),
      bins,
    ),
  };
}

/** Regions of the most probable days, by the mass that they claim. */
export const REGIONS = [0.5, 0.8, 0.95] as const;

/**
 * Share of truths that lie in the region of the most probable days of a given mass, with its standard
 * error. The day at the region's edge belongs to it by chance, so that the region has just that mass.
 *
 * @param levels one a dossier, between 0 and 1
 * @param mass of the region, between 0 and 1
 */
export function coverage(levels: readonly number[], mass: number) {
  const share = levels.filter((level) => level < mass).length / levels.length;
  return { share, error: Math.sqrt((share * (1 - share)) / levels.length) };
}

/** How well ranks between 0 and 1 agree with the uniform distribution. */
export function uniformity(ranks: readonly number[], bins: number): Uniformity {
  const counts = Array.from({ length: bins }, () => 0);
  for (const rank of ranks) counts[Math.min(bins - 1, Math.floor(rank * bins))]! += 1;
  const expected = ranks.length / bins;
  const chiSquare = counts.reduce((sum, n) => sum + (n - expected) ** 2 / expected, 0);
  const sorted = [...ranks].sort((a, b) => a - b);
  const n = sorted.length;
  const distance = sorted.reduce((most, r, i) => Math.max(most, r - i / n, (i + 1) / n - r), 0);
  return {
    counts,
    ranks,
    chiSquare,
    p: chiSquareTail(chiSquare, bins - 1),
    distance,
    pDistance: kolmogorovTail(distance, n),
  };
}
