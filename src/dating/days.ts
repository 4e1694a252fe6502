import { isoOf, weekdayOf } from '../evidence/index.ts';
import { pick } from '../maths/index.ts';
import { cellHolding } from './cells.ts';
import { pullTogether } from './coincidence.ts';
import { fillLikelihood, valueAt, withCopying } from './likelihood.ts';
import type { Problem } from './problem.ts';
import { N_READINGS } from './readings.ts';
import { NO_DAY, type State } from './state.ts';
import { cellWeight, countWeekday, weekdayWeights } from './weekdays.ts';

/**
 * Fills `product` for an event whose day is lifted: prior of its weekday and of its neighbours' days,
 * sequence facts with the neighbours' current days, and all its statements. The largest entry is 1.
 *
 * @param cut false leaves the sequence facts out
 */
export function fillProduct(problem: Problem, state: State, e: number, cut = true): void {
  const from = problem.cellStart[e]!;
  const n = problem.cellStart[e + 1]! - from;
  const week = weekdayWeights(problem, state, e);
  const { product, row } = state;
  for (let k = from; k < from + n; k++) product[k] = cellWeight(problem, k, week);
  pullTogether(problem, state, e);
  if (cut) cutToSequence(problem, state, e);
  for (let v = problem.viewStart[e]!; v < problem.viewStart[e + 1]!; v++) {
    fillLikelihood(problem, state, v, n);
    for (let k = 0; k < n; k++) product[from + k]! *= row[k]!;
    if (((v - problem.viewStart[e]!) & 7) === 7) rescale(product, from, n);
  }
  addBackLinks(problem, state, e);
  rescale(product, from, n);
}

function rescale(product: Float64Array, from: number, n: number) {
  let most = 0;
  for (let k = from; k < from + n; k++) if (product[k]! > most) most = product[k]!;
  if (most > 0) for (let k = from; k < from + n; k++) product[k]! /= most;
}

/** Scales each cell by the share of its days that the sequence facts allow. */
function cutToSequence(problem: Problem, state: State, e: number) {
  const [after, before] = allowed(problem, state, e);
  if (after === Number.NEGATIVE_INFINITY && before === Number.POSITIVE_INFINITY) return;
  pullToEarliest(problem, state, e);
  for (let k = problem.cellStart[e]!; k < problem.cellStart[e + 1]!; k++) {
    const lo = problem.cellLo[k]!;
    const hi = problem.cellHi[k]!;
    const left = Math.min(hi, before - 1) - Math.max(lo, after + 1) + 1;
    state.product[k]! *= Math.max(0, left) / (hi - lo + 1);
  }
}

/** Odds that a printing in several products came with the earliest of them that is known. Judgement. */
const WITH_EARLIEST = 9;

/**
 * How many times as likely as by chance a printing has the day of a product that it lies in: it came
 * no later than each, and with the earliest of them, save where one of them is not known.
 */
export function earliestWeight({ first, last }: Problem): number {
  return (WITH_EARLIEST * (last - first + 1)) / 2;
}

/** Makes the days of products likelier for what lies in them, and its day for them. */
function pullToEarliest(problem: Problem, state: State, e: number) {
  const { before, beforeStart, beforeGap, after, afterStart, afterGap } = problem;
  const pull = (other: number) => {
    const day = state.day[other]!;
    const k = day === NO_DAY ? -1 : cellHolding(problem, e, day);
    if (k < 0) return;
    const days = problem.cellHi[k]! - problem.cellLo[k]! + 1;
    state.product[k]! *= 1 + (earliestWeight(problem) - 1) / days;
  };
  for (let j = beforeStart[e]!; j < beforeStart[e + 1]!; j++) if (!beforeGap[j]) pull(before[j]!);
  for (let j = afterStart[e]!; j < afterStart[e + 1]!; j++) if (!afterGap[j]) pull(after[j]!);
}

/** The days between which an event must lie, strictly, by its neighbours' current days. */
function allowed(problem: Problem, state: State, e: number): [number, number] {
  let after = Number.NEGATIVE_INFINITY;
  let before = Number.POSITIVE_INFINITY;
  for (let j = problem.beforeStart[e]!; j < problem.beforeStart[e + 1]!; j++) {
    const day = state.day[problem.before[j]!]!;
    if (day !== NO_DAY) after = Math.max(after, day + problem.beforeGap[j]! - 1);
  }
  for (let j = problem.afterStart[e]!; j < problem.afterStart[e + 1]!; j++) {
    const day = state.day[problem.after[j]!]!;
    if (day !== NO_DAY) before = Math.min(before, day - problem.afterGap[j]! + 1);
  }
  return [after, before];
}

/** Statements elsewhere that may have been taken from this event make their days likelier here. */
function addBackLinks(problem: Problem, state: State, e: number) {
  const { backView, backCell, viewEvent } = problem;
  const end = problem.backStart[e + 1]!;
  let extra = 0;
  for (let j = problem.backStart[e]!; j < end; j++) {
    const v = backView[j]!;
    extra += backWorth(problem, state, j);
    // Several ways in which one statement may have been taken from here add up; they lie together.
    if (j + 1 < end && backView[j + 1] === v) continue;
    const there = viewEvent[v]!;
    if (state.day[there] !== NO_DAY) {
      const plain = valueAt(problem, state, v, state.cell[there]!);
      const base = withCopying(state, v, plain);
      state.product[backCell[j]!]! *= withCopying(state, v, plain + extra) / base;
    }
    extra = 0;
  }
}

/** What a link to an event adds to the likelihood of its statement where the event has its day. */
function backWorth(problem: Problem, { rates }: State, j: number): number {
  const link = problem.backLink[j]!;
  const at = problem.viewRate[problem.backView[j]!]! * N_READINGS;
  return rates.shares[at + problem.linkReading[link]!]! * problem.linkShare[link]!;
}

/** Draws an event's day from `product`, and returns the total of its weights. */
export function drawDay(problem: Problem, state: State, e: number): number {
  const from = problem.cellStart[e]!;
  const n = problem.cellStart[e + 1]! - from;
  let total = totalOf(state, from, n);
  if (!(total > 0)) {
    for (let k = from; k < from + n; k++) state.product[k] = 1;
    cutToSequence(problem, state, e);
    total = totalOf(state, from, n);
  }
  if (!(total > 0)) throw new RangeError(`no day is left near ${isoOf(problem.first)}`);
  const k = pick(state.random, state.product.subarray(from, from + n), total, n);
  setDay(problem, state, e, k, dayWithin(problem, state, e, from + k));
  return total;
}

function totalOf({ product }: State, from: number, n: number): number {
  let total = 0;
  for (let k = from; k < from + n; k++) total += product[k]!;
  return total;
}

/** Takes an event's day away, so that nothing looks at it while the event is weighed. */
export function liftDay(problem: Problem, state: State, e: number): void {
  if (state.day[e] === NO_DAY) return;
  countWeekday(problem, state, e, -1);
  state.day[e] = NO_DAY;
}

/** Gives an event a day and the cell that holds it, and counts its weekday. */
export function setDay(problem: Problem, state: State, e: number, k: number, day: number): void {
  state.cell[e] = k;
  state.day[e] = day;
  countWeekday(problem, state, e, 1);
}

/** A day within a block, by the weights of weekdays and within what the sequence allows. */
function dayWithin(problem: Problem, state: State, e: number, k: number): number {
  const lo = problem.cellLo[k]!;
  const hi = problem.cellHi[k]!;
  if (lo === hi) return lo;
  const [after, before] = allowed(problem, state, e);
  const first = Math.max(lo, after + 1);
  const last = Math.min(hi, before - 1);
  const at = problem.cellWeek[k]!;
  const week = weekdayWeights(problem, state, e).subarray(at, at + 7);
  const most = Math.max(...week);
  for (let tries = 0; tries < 60; tries++) {
    const day = first + state.random.below(last - first + 1);
    if (state.random.uniform() * most <= week[weekdayOf(day) - 1]!) return day;
  }
  return first + state.random.below(last - first + 1);
}
