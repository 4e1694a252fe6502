import type { Item, Problem, Voice } from './latent.ts';

/** Chance of candidate `t` of an item by how common values are; -1: of all that are no candidates. */
export type Commonness = (item: Item, own: Float64Array, t: number) => number;

/** How common each value is within its group, by the answers so far. */
export function commonness(problem: Problem, posterior: readonly Float64Array[]): Commonness {
  const counts = problem.vocabulary.map((size) => new Float64Array(size).fill(problem.classPseudo));
  const totals = problem.vocabulary.map((size) => size * problem.classPseudo);
  problem.items.forEach(({ group, candidates }, i) => {
    candidates.forEach((value, t) => {
      counts[group]![value]! += posterior[i]![t]!;
    });
    totals[group]! += 1;
  });
  const kept = problem.own === 'counted' ? 0 : 1;
  return ({ group, candidates }, own, t) => {
    const all = totals[group]! - kept;
    const share = (i: number) => (counts[group]![candidates[i]!]! - kept * own[i]!) / all;
    if (t >= 0) return share(t);
    if (candidates.length >= counts[group]!.length) return 0;
    return candidates.reduce((left, _, i) => left - share(i), 1);
  };
}

/** What the sources do, by the answers so far. */
export interface Rates {
  /** Rate of each cell of the tying. */
  readonly rate: Float64Array;
  /** Observations in each cell, pseudo-observations among them. */
  readonly count: Float64Array;
  /** For each voice, under each candidate, how much it adds to its cell. */
  readonly added: readonly Float64Array[];
}

/** Counts right and wrong words; `before` tells how likely a derived voice spoke for itself. */
export function ratesOf(
  problem: Problem,
  posterior: readonly Float64Array[],
  before: Float64Array,
): Rates {
  const count = Float64Array.from(problem.tying.pseudo);
  const added = problem.voices.map((voice) =>
    posterior[voice.item]!.map((p, t) => {
      const amount = voice.weight * p * alone(problem, voice, t, before);
      count[cellOf(problem, voice, t)]! += amount;
      return amount;
    }),
  );
  return { rate: shares(count, problem.tying.columns), count, added };
}

/** Chance of a voice's word where candidate `t` is true; past the candidates: any other value. */
export function chanceOf(problem: Problem, voice: number, t: number, rates: Rates): number {
  const said = problem.voices[voice]!;
  const cell = cellOf(problem, said, t);
  const rate = problem.own === 'counted' ? rates.rate[cell]! : without(problem, voice, cell, rates);
  return said.copied + (1 - said.derived) * rate * shareOf(problem, said, t);
}

/** Rates of the cells from counts, each row adding up to 1. */
export function shares(count: Float64Array, columns: number): Float64Array {
  const rate = new Float64Array(count.length);
  for (let row = 0; row < count.length; row += columns) {
    const total = count.subarray(row, row + columns).reduce((a, b) => a + b, 0);
    for (let c = row; c < row + columns; c++) rate[c] = total > 0 ? count[c]! / total : 0;
  }
  return rate;
}

/** Rate of a cell with the voice's own contributions taken out. */
function without(problem: Problem, voice: number, cell: number, rates: Rates): number {
  const { columns } = problem.tying;
  const row = cell - (cell % columns);
  let count = rates.count[cell]!;
  let total = rates.count.subarray(row, row + columns).reduce((a, b) => a + b, 0);
  rates.added[voice]!.forEach((amount, t) => {
    const at = cellOf(problem, problem.voices[voice]!, t);
    if (at === cell) count -= amount;
    if (at >= row && at < row + columns) total -= amount;
  });
  return count / total;
}

function alone(problem: Problem, voice: Voice, t: number, rate: Float64Array): number {
  if (voice.copied === 0) return 1;
  const own = (1 - voice.derived) * rate[cellOf(problem, voice, t)]! * shareOf(problem, voice, t);
  return own / (voice.copied + own);
}

function cellOf(problem: Problem, { item, source, value }: Voice, t: number): number {
  return problem.tying.cell(source, problem.items[item]!.candidates[t] ?? -1, value);
}

function shareOf(problem: Problem, { item, value }: Voice, t: number): number {
  const { group, candidates } = problem.items[item]!;
  return problem.tying.share(group, candidates[t] ?? -1, value);
}
