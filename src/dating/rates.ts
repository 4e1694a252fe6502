import type { SourceKind } from '../evidence/index.ts';
import type { Chance } from '../maths/index.ts';
import type { Problem } from './problem.ts';
import { isOpen, N_READINGS, NEAR_MOMENT, OTHER_MOMENT, priorLogOdds } from './readings.ts';

/** Log odds of the lag reading for a source that does date another moment: its habit. Judgement. */
const LAG_HABIT = Math.log(2.5);
/** Log odds of a day or two beside that moment against the moment itself. Judgement. */
const BESIDE = Math.log(0.14);
/** Stands in the place of a reading for all errors together. */
export const COMMON = 0;

/**
 * The shares of the readings, on the logit scale, as sums of effects: dossier, kind, kind × era,
 * source, source × market; at each level one effect for all errors together (how sloppy) and one
 * for each reading. Every level's spread is learned. After `gelman:2007`, chapter 13.
 */
export interface Rates {
  /** Readings' odds against `right`, N_READINGS a rate cell. */
  readonly odds: Float64Array;
  /** Their shares, summing to one in each cell. */
  readonly shares: Float64Array;
  readonly value: Float64Array;
  readonly level: Uint8Array;
  /** COMMON for all errors together, else the reading. */
  readonly reading: Uint8Array;
  readonly cellStart: Int32Array;
  readonly cells: Int32Array;
  /** Spread (variance) of each level's effects. */
  readonly variance: Float64Array;
  /** For each source, the index of its effect on all errors together; −1 where it makes none. */
  readonly sloppiness: Int32Array;
}

/** Prior standard deviation of each level's effects, and how firmly it is held. Judgement. */
const LEVELS: readonly { readonly sd: number; readonly firm: number }[] = [
  { sd: 1, firm: 1000 }, // dossier, all errors
  { sd: 0.8, firm: 1000 }, // dossier, one reading
  { sd: 0.4, firm: 4 }, // kind, all errors
  { sd: 0.4, firm: 6 }, // kind, one reading
  { sd: 0.4, firm: 4 }, // kind × era, all errors
  { sd: 0.9, firm: 3 }, // source, all errors
  { sd: 0.8, firm: 6 }, // source, one reading
  { sd: 0.5, firm: 4 }, // source × market, all errors
  { sd: 0.5, firm: 8 }, // source × market, one reading
];

/** Level of a source's effect on all its errors together. */
const SOURCE_LEVEL = 5;

/** Sets up the effects at zero; `shares` start at their prior means. */
export function createRates(problem: Problem, kinds: readonly SourceKind[]): Rates {
  const value: number[] = [];
  const level: number[] = [];
  const reading: number[] = [];
  const lists: number[][] = [];
  const add = (l: number, r: number, cells: number[]) => {
    value.push(0);
    level.push(l);
    reading.push(r);
    lists.push(cells);
  };
  const addLevel = (
    common: number,
    single: number | undefined,
    keyOf: (c: number) => string | number,
  ) => {
    for (const cells of groupsOf(problem.nRates, keyOf)) {
      add(common, COMMON, cells);
      if (single === undefined) continue;
      for (let r = 1; r < N_READINGS; r++) add(single, r, cells);
    }
  };
  const { rateSource, rateMarket, rateEra } = problem;
  addLevel(0, 1, () => 0);
  addLevel(2, 3, (c) => kinds[rateSource[c]!]!);
  addLevel(4, undefined, (c) => `${kinds[rateSource[c]!]} ${rateEra[c]}`);
  addLevel(SOURCE_LEVEL, SOURCE_LEVEL + 1, (c) => rateSource[c]!);
  addLevel(7, 8, (c) => `${rateSource[c]} ${rateMarket[c]}`);
  const cellStart = new Int32Array(lists.length + 1);
  lists.forEach((list, x) => {
    cellStart[x + 1] = cellStart[x]! + list.length;
  });
  const sloppiness = new Int32Array(problem.nSources).fill(-1);
  level.forEach((l, x) => {
    if (l === SOURCE_LEVEL) sloppiness[rateSource[lists[x]![0]!]!] = x;
  });
  const odds = new Float64Array(problem.nRates * N_READINGS);
  for (let c = 0; c < problem.nRates; c++) {
    const prior = usualLogOdds(kinds[rateSource[c]!]!);
    for (let r = 0; r < N_READINGS; r++) odds[c * N_READINGS + r] = Math.exp(prior[r]!);
  }
  return {
    odds,
    shares: new Float64Array(odds.length),
    value: Float64Array.from(value),
    level: Uint8Array.from(level),
    reading: Uint8Array.from(reading),
    cellStart,
    cells: Int32Array.from(lists.flat()),
    variance: Float64Array.from(LEVELS, ({ sd }) => sd * sd),
    sloppiness,
  };
}

/** Log odds of each reading against `right` for a kind of source, where no effect is learned. */
export function usualLogOdds(kind: SourceKind): Float64Array {
  const prior = priorLogOdds(kind);
  prior[OTHER_MOMENT] = LAG_HABIT;
  prior[NEAR_MOMENT] = LAG_HABIT + BESIDE;
  return prior;
}

/** A source's effect on all its errors together, and the spread of such effects. */
export function sourceSloppiness({ sloppiness, value, variance }: Rates, s: number) {
  const x = sloppiness[s]!;
  return { value: x < 0 ? 0 : value[x]!, variance: variance[SOURCE_LEVEL]! };
}

/** Changes a source's effect on all its errors together; shares must be filled anew. */
export function tiltSource(rates: Rates, s: number, by: number): void {
  const x = rates.sloppiness[s]!;
  if (x < 0) return;
  rates.value[x]! += by;
  const factor = Math.exp(by);
  for (let j = rates.cellStart[x]!; j < rates.cellStart[x + 1]!; j++) {
    const at = rates.cells[j]! * N_READINGS;
    for (let r = 1; r < N_READINGS; r++) if (r !== OTHER_MOMENT) rates.odds[at + r]! *= factor;
  }
}

function groupsOf(n: number, keyOf: (c: number) => string | number): number[][] {
  const groups = new Map<string | number, number[]>();
  for (let c = 0; c < n; c++) {
    const key = keyOf(c);
    const group = groups.get(key);
    if (group) group.push(c);
    else groups.set(key, [c]);
  }
  return [...groups.values()];
}

/** Writes the shares; the lag reading counts only for sources that date another moment. */
export function fillShares(rates: Rates, problem: Problem, lagOf: Int32Array): void {
  for (let c = 0; c < problem.nRates; c++) {
    const at = c * N_READINGS;
    const lagged = lagOf[problem.rateSource[c]!]! >= 0;
    let sum = 0;
    for (let r = 0; r < N_READINGS; r++) if (isOpen(r, lagged)) sum += rates.odds[at + r]!;
    for (let r = 0; r < N_READINGS; r++) {
      rates.shares[at + r] = isOpen(r, lagged) ? rates.odds[at + r]! / sum : 0;
    }
  }
}

/**
 * Draws every effect and every spread once, given how often each reading was drawn in each cell.
 * Each effect is proposed from the normal that matches its conditional's slope and curvature, and
 * accepted by Metropolis and Hastings (`gamerman:1997`).
 */
export function drawRates(
  rates: Rates,
  problem: Problem,
  counts: Int32Array,
  lagOf: Int32Array,
  random: Chance,
): void {
  const sums = cellSums(rates, problem, lagOf);
  for (let x = 0; x < rates.value.length; x++)
    drawEffect(rates, x, problem, counts, lagOf, sums, random);
  drawSpreads(rates, random);
  fillShares(rates, problem, lagOf);
}

function cellSums(rates: Rates, problem: Problem, lagOf: Int32Array): Float64Array {
  const sums = new Float64Array(problem.nRates);
  for (let c = 0; c < problem.nRates; c++) {
    const lagged = lagOf[problem.rateSource[c]!]! >= 0;
    for (let r = 0; r < N_READINGS; r++) {
      if (isOpen(r, lagged)) sums[c]! += rates.odds[c * N_READINGS + r]!;
    }
  }
  return sums;
}

function drawEffect(
  rates: Rates,
  x: number,
  problem: Problem,
  counts: Int32Array,
  lagOf: Int32Array,
  sums: Float64Array,
  random: Chance,
): void {
  const { odds, cells, cellStart } = rates;
  const r = rates.reading[x]!;
  const variance = rates.variance[rates.level[x]!]!;
  const old = rates.value[x]!;
  const from = cellStart[x]!;
  const to = cellStart[x + 1]!;
  const slope = { first: 0, second: 0, log: 0 };
  const measure = (step: number, at: number) => {
    const factor = Math.exp(step);
    slope.first = -at / variance;
    slope.second = 1 / variance;
    slope.log = (-0.5 * at * at) / variance;
    for (let j = from; j < to; j++) {
      const c = cells[j]!;
      const active = r === COMMON || isOpen(r, lagOf[problem.rateSource[c]!]! >= 0);
      const n = counts[c * (N_READINGS + 1) + N_READINGS]!;
      if (n === 0 || !active) continue;
      const row = c * (N_READINGS + 1);
      const lag = lagOf[problem.rateSource[c]!]! >= 0 ? odds[c * N_READINGS + OTHER_MOMENT]! : 0;
      const errors = n - counts[row]! - counts[row + OTHER_MOMENT]!;
      const hit = r === COMMON ? errors : counts[row + r]!;
      const weight =
        r === COMMON ? sums[c]! - odds[c * N_READINGS]! - lag : odds[c * N_READINGS + r]!;
      const total = sums[c]! + weight * (factor - 1);
      const p = (weight * factor) / total;
      slope.first += hit - n * p;
      slope.second += n * p * (1 - p);
      slope.log += hit * step - n * Math.log(total / sums[c]!);
    }
  };
  measure(0, old);
  const sd = 1 / Math.sqrt(slope.second);
  const centre = old + slope.first / slope.second;
  const next = centre + sd * random.normal();
  const before = slope.log;
  const out = (next - centre) / sd;
  measure(next - old, next);
  const backSd = 1 / Math.sqrt(slope.second);
  const back = (old - next - slope.first / slope.second) / backSd;
  const ratio = slope.log - before + 0.5 * out * out - 0.5 * back * back + Math.log(sd / backSd);
  if (Math.log(random.uniform()) >= ratio) return;
  rates.value[x] = next;
  const factor = Math.exp(next - old);
  for (let j = from; j < to; j++) scaleCell(rates, cells[j]!, r, factor, problem, lagOf, sums);
}

function scaleCell(
  { odds }: Rates,
  c: number,
  r: number,
  factor: number,
  problem: Problem,
  lagOf: Int32Array,
  sums: Float64Array,
) {
  const lagged = lagOf[problem.rateSource[c]!]! >= 0;
  const from = r === COMMON ? 1 : r;
  const to = r === COMMON ? N_READINGS - 1 : r;
  for (let q = from; q <= to; q++) {
    if (r === COMMON && q === OTHER_MOMENT) continue;
    const was = odds[c * N_READINGS + q]!;
    odds[c * N_READINGS + q] = was * factor;
    if (isOpen(q, lagged)) sums[c]! += was * (factor - 1);
  }
}

/** Most by which a level's spread may exceed its prior mean. Judgement. */
const WIDEST = 2.5;

/** Each level's variance from its inverse-gamma conditional, cut off where no spread is credible. */
function drawSpreads(rates: Rates, random: Chance): void {
  const n = new Float64Array(LEVELS.length);
  const squares = new Float64Array(LEVELS.length);
  rates.value.forEach((v, x) => {
    n[rates.level[x]!]! += 1;
    squares[rates.level[x]!]! += v * v;
  });
  LEVELS.forEach(({ sd, firm }, l) => {
    if (firm > 100) return;
    const shape = (firm + n[l]!) / 2;
    const scale = (firm * sd * sd + squares[l]!) / 2;
    const most = (WIDEST * sd) ** 2;
    let drawn = scale / random.gamma(shape);
    for (let tries = 0; drawn > most && tries < 20; tries++) drawn = scale / random.gamma(shape);
    rates.variance[l] = Math.min(drawn, most);
  });
}
