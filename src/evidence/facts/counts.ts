import type { Item, Problem } from './problem.ts';

/** Every voice under every candidate of its item, one after the other. */
export interface Cells {
  /** Where a voice begins; it has as many places as its item has candidates, and one more. */
  readonly start: Int32Array;
  /** Cell of the tying, and the share of the cell's rate that falls on the voice's own value. */
  readonly cell: Int32Array;
  readonly share: Float64Array;
}

/** Looks up the cells of a problem, once for all sweeps. */
export function cellsOf({ items, voices, tying }: Problem): Cells {
  const start = new Int32Array(voices.length + 1);
  voices.forEach(({ item }, v) => {
    start[v + 1] = start[v]! + items[item]!.candidates.length + 1;
  });
  const cell = new Int32Array(start[voices.length]!);
  const share = new Float64Array(cell.length);
  voices.forEach(({ item, source, value }, v) => {
    const { group, candidates } = items[item]!;
    for (let t = 0; t <= candidates.length; t++) {
      const truth = candidates[t] ?? -1;
      cell[start[v]! + t] = tying.cell(source, truth, value);
      share[start[v]! + t] = tying.share(group, truth, value);
    }
  });
  return { start, cell, share };
}

/** Chance of candidate `t` of an item by how common values are; -1: of all that are no candidates. */
export type Commonness = (item: Item, own: readonly number[], t: number) => number;

/** How common each value is within its group, by the answers so far. */
export function commonness(
  problem: Problem,
  posterior: readonly (readonly number[])[],
): Commonness {
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
    const count = counts[group]!;
    const all = totals[group]! - kept;
    if (t >= 0) return (count[candidates[t]!]! - kept * own[t]!) / all;
    if (candidates.length >= count.length) return 0;
    let left = all;
    for (let i = 0; i < candidates.length; i++) left -= count[candidates[i]!]! - kept * own[i]!;
    return left / all;
  };
}

/** What the sources do, by the answers so far. */
export interface Rates {
  /** Rate of each cell of the tying. */
  readonly rate: Float64Array;
  /** Observations in each cell, pseudo-observations among them, and in each row of cells. */
  readonly count: Float64Array;
  readonly total: Float64Array;
  /** What each voice adds to its cell under each candidate. */
  readonly added: Float64Array;
}

/** Counts right and wrong words; `before` tells how likely a derived voice spoke for itself. */
export function ratesOf(
  problem: Problem,
  cells: Cells,
  posterior: readonly (readonly number[])[],
  before: Float64Array,
): Rates {
  const { columns, pseudo } = problem.tying;
  const count = Float64Array.from(pseudo);
  const added = new Float64Array(cells.cell.length);
  problem.voices.forEach(({ item, weight, copied, derived }, v) => {
    const own = posterior[item]!;
    for (let t = 0, at = cells.start[v]!; t < own.length; t++, at++) {
      const cell = cells.cell[at]!;
      const word = (1 - derived) * before[cell]! * cells.share[at]!;
      const alone = copied === 0 ? 1 : word / (copied + word);
      added[at] = weight * own[t]! * alone;
      count[cell]! += added[at]!;
    }
  });
  return { rate: shares(count, columns), count, total: totals(count, columns), added };
}

/** Chance of a voice's word where candidate `t` is true; past the candidates: any other value. */
export function chanceOf(
  problem: Problem,
  cells: Cells,
  voice: number,
  t: number,
  rates: Rates,
): number {
  const { copied, derived } = problem.voices[voice]!;
  const at = cells.start[voice]! + t;
  const cell = cells.cell[at]!;
  const { columns } = problem.tying;
  const rate =
    problem.own === 'counted' ? rates.rate[cell]! : without(cells, voice, cell, columns, rates);
  return copied + (1 - derived) * rate * cells.share[at]!;
}

/** Rate of a cell with the voice's own contributions taken out. */
function without(cells: Cells, voice: number, cell: number, columns: number, rates: Rates): number {
  const row = Math.floor(cell / columns);
  let count = rates.count[cell]!;
  let total = rates.total[row]!;
  for (let at = cells.start[voice]!; at < cells.start[voice + 1]!; at++) {
    if (cells.cell[at] === cell) count -= rates.added[at]!;
    if (Math.floor(cells.cell[at]! / columns) === row) total -= rates.added[at]!;
  }
  return count / total;
}

/** Rates of the cells from counts, each row adding up to 1. */
export function shares(count: Float64Array, columns: number): Float64Array {
  const total = totals(count, columns);
  return count.map((n, cell) => {
    const all = total[Math.floor(cell / columns)]!;
    return all > 0 ? n / all : 0;
  });
}

function totals(count: Float64Array, columns: number): Float64Array {
  const total = new Float64Array(count.length / columns);
  count.forEach((n, cell) => {
    total[Math.floor(cell / columns)]! += n;
  });
  return total;
}
