import type { SourceKind } from '../evidence/index.ts';
import { chance } from '../maths/index.ts';
import { fillProduct } from './days.ts';
import { forestGroups } from './groups.ts';
import type { Problem } from './problem.ts';
import { RIGHT } from './readings.ts';
import { createState } from './state.ts';

/**
 * A cell of less than this share of its event's likeliest, under prior rates and with every source
 * its own, is left out unless a claim names it. It takes some six sources that agree on a day to rule
 * out a month far from it; were they all copies of one, the chance that this one is noise is lost.
 * Judgement.
 */
const FAINTEST = 1e-30;

/** A problem without the cells that hardly any evidence leaves possible. */
export function thinned(problem: Problem, kinds: readonly SourceKind[]): Problem {
  const keep = cellsToKeep(problem, kinds);
  /** New index of each cell that is kept. */
  const place = new Int32Array(keep.length + 1);
  for (let k = 0; k < keep.length; k++) place[k + 1] = place[k]! + keep[k]!;
  return {
    ...problem,
    cellStart: problem.cellStart.map((k) => place[k]!),
    ...thinnedCells(problem, keep, place[keep.length]!),
    backCell: problem.backCell.map((k) => place[k]!),
    sharedCell: problem.sharedCell.map((k) => place[k]!),
    ...thinnedRows(problem, keep, place),
    ...thinnedEntries(problem, keep, place),
    ...thinnedLags(problem, keep, place),
  };
}

function thinnedCells(problem: Problem, keep: Uint8Array, n: number) {
  const out = {
    cellLo: new Int32Array(n),
    cellHi: new Int32Array(n),
    cellWeekday: new Int8Array(n),
    cellWeekdays: new Uint16Array(7 * n),
    cellWeek: new Uint16Array(n),
  };
  for (let k = 0, to = 0; k < keep.length; k++) {
    if (keep[k] === 0) continue;
    out.cellLo[to] = problem.cellLo[k]!;
    out.cellHi[to] = problem.cellHi[k]!;
    out.cellWeekday[to] = problem.cellWeekday[k]!;
    out.cellWeek[to] = problem.cellWeek[k]!;
    for (let w = 0; w < 7; w++) out.cellWeekdays[7 * to + w] = problem.cellWeekdays[7 * k + w]!;
    to++;
  }
  return out;
}

/** First and last day of something of each event. */
interface Reach {
  readonly first: Float64Array;
  readonly last: Float64Array;
}

/** 1 for each cell that the evidence leaves possible, that a claim names or that a sequence may need. */
function cellsToKeep(problem: Problem, kinds: readonly SourceKind[]): Uint8Array {
  const { nEvents, cellStart, viewStart, entryStart, entryCell, entryReading } = problem;
  const state = createState(problem, kinds, chance(0));
  const keep = new Uint8Array(state.product.length);
  for (let e = 0; e < nEvents; e++) {
    fillProduct(problem, state, e);
    const from = cellStart[e]!;
    for (let k = from; k < cellStart[e + 1]!; k++) keep[k] = state.product[k]! >= FAINTEST ? 1 : 0;
    for (let j = entryStart[viewStart[e]!]!; j < entryStart[viewStart[e + 1]!]!; j++)
      if (entryReading[j] === RIGHT) keep[from + entryCell[j]!] = 1;
  }
  for (const k of problem.backCell) keep[k] = 1;
  for (const k of problem.sharedCell) keep[k] = 1;
  keepForSequence(problem, keep, state.product);
  return keep;
}

function reachOf({ nEvents, cellStart, cellLo, cellHi }: Problem, holds: (k: number) => boolean) {
  const first = new Float64Array(nEvents).fill(Number.POSITIVE_INFINITY);
  const last = new Float64Array(nEvents).fill(Number.NEGATIVE_INFINITY);
  for (let e = 0; e < nEvents; e++) {
    for (let k = cellStart[e]!; k < cellStart[e + 1]!; k++) {
      if (!holds(k)) continue;
      first[e] = Math.min(first[e]!, cellLo[k]!);
      last[e] = Math.max(last[e]!, cellHi[k]!);
    }
  }
  return { first, last };
}

/** A sequence takes cells of less than this share of the likeliest only where nothing else is left. */
const LIKELY = 1e-6;

/**
 * Widens what is kept of events that facts put in an order against their evidence, so that any of
 * them may give way. Afterwards `likely` is what the facts leave of it.
 */
function widen(
  { beforeStart, before, beforeGap }: Problem,
  events: readonly number[],
  kept: Reach,
  likely: Reach,
): void {
  for (let moved = true; moved; ) {
    moved = false;
    for (const e of events) {
      for (let j = beforeStart[e]!; j < beforeStart[e + 1]!; j++) {
        const p = before[j]!;
        const gap = beforeGap[j]!;
        moved = raise(likely.first, e, likely.first[p]! + gap) || moved;
        moved = lower(likely.last, p, likely.last[e]! - gap) || moved;
        if (likely.first[e]! > kept.last[e]!)
          moved = raise(kept.last, e, kept.last[p]! + gap) || moved;
        if (likely.last[p]! < kept.first[p]!)
          moved = lower(kept.first, p, kept.first[e]! - gap) || moved;
      }
    }
  }
}

function raise(days: Float64Array, e: number, least: number): boolean {
  if (days[e]! >= least) return false;
  days[e] = least;
  return true;
}

function lower(days: Float64Array, e: number, most: number): boolean {
  if (days[e]! <= most) return false;
  days[e] = most;
  return true;
}

/**
 * Keeps what a sequence may need. Events whose days are not drawn together keep all cells, since any
 * day of a neighbour may bound them; the others all between the first and the last that are kept.
 */
function keepForSequence(problem: Problem, keep: Uint8Array, product: Float64Array): void {
  const { nEvents, cellStart, cellLo, cellHi, beforeStart, afterStart } = problem;
  const groups = forestGroups(problem);
  const { first, last } = reachOf(problem, (k) => keep[k] === 1);
  const likely = reachOf(problem, (k) => product[k]! >= LIKELY);
  for (const { events } of groups) widen(problem, events, { first, last }, likely);
  const together = new Set(groups.flatMap(({ events }) => events));
  for (let e = 0; e < nEvents; e++) {
    const free = beforeStart[e] === beforeStart[e + 1] && afterStart[e] === afterStart[e + 1];
    for (let k = cellStart[e]!; !free && k < cellStart[e + 1]!; k++) {
      const within = cellHi[k]! >= first[e]! && cellLo[k]! <= last[e]!;
      if (within || !together.has(e)) keep[k] = 1;
    }
  }
}

function thinnedRows(problem: Problem, keep: Uint8Array, place: Int32Array) {
  const { nViews, cellStart, viewEvent } = problem;
  const rowStart = new Int32Array(nViews + 1);
  for (let v = 0; v < nViews; v++) {
    const e = viewEvent[v]!;
    rowStart[v + 1] = rowStart[v]! + place[cellStart[e + 1]!]! - place[cellStart[e]!]!;
  }
  const bins = new Uint8Array(rowStart[nViews]!);
  let n = 0;
  for (let v = 0; v < nViews; v++) {
    const from = cellStart[viewEvent[v]!]!;
    const at = problem.rowStart[v]!;
    for (let k = 0; k < problem.rowStart[v + 1]! - at; k++)
      if (keep[from + k] === 1) bins[n++] = problem.bins[at + k]!;
  }
  return { rowStart, bins };
}

/**
 * Sparse lists of cells, some lists a view, without the cells that are left out.
 *
 * @returns also the old index of each entry that is kept
 */
function thinnedLists(
  { nViews, cellStart, viewEvent }: Problem,
  start: Int32Array,
  cell: Uint16Array,
  keep: Uint8Array,
  place: Int32Array,
) {
  const lists = (start.length - 1) / Math.max(1, nViews);
  const newStart = new Int32Array(start.length);
  const newCell = new Uint16Array(cell.length);
  const old = new Int32Array(cell.length);
  let n = 0;
  for (let list = 0; list < start.length - 1; list++) {
    const from = cellStart[viewEvent[Math.floor(list / lists)]!]!;
    for (let j = start[list]!; j < start[list + 1]!; j++) {
      const k = from + cell[j]!;
      if (keep[k] === 0) continue;
      newCell[n] = place[k]! - place[from]!;
      old[n++] = j;
    }
    newStart[list + 1] = n;
  }
  return { start: newStart, cell: newCell.slice(0, n), old: old.subarray(0, n) };
}

function thinnedEntries(problem: Problem, keep: Uint8Array, place: Int32Array) {
  const { entryStart, entryCell, entryReading, entryCoef } = problem;
  const { start, cell, old } = thinnedLists(problem, entryStart, entryCell, keep, place);
  return {
    entryStart: start,
    entryCell: cell,
    entryReading: chosen(entryReading, old, new Uint8Array(old.length)),
    entryCoef: chosen(entryCoef, old, new Float32Array(old.length)),
  };
}

function thinnedLags(problem: Problem, keep: Uint8Array, place: Int32Array) {
  const { lagStart, lagCell, lagReading, lagCoef } = problem;
  const { start, cell, old } = thinnedLists(problem, lagStart, lagCell, keep, place);
  return {
    lagStart: start,
    lagCell: cell,
    lagReading: chosen(lagReading, old, new Uint8Array(old.length)),
    lagCoef: chosen(lagCoef, old, new Float32Array(old.length)),
  };
}

function chosen<T extends Uint8Array | Float32Array>(column: T, old: Int32Array, out: T): T {
  for (let j = 0; j < old.length; j++) out[j] = column[old[j]!]!;
  return out;
}
