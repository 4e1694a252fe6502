import { type CellArrays, sliceOf } from './cells.ts';
import { cellOfDay } from './entries.ts';
import { startsOf } from './grow.ts';
import type { Link } from './links.ts';
import type { Problem } from './problem.ts';
import { ROW_SHIFT } from './readings.ts';
import type { State } from './state.ts';
import type { Statement } from './statements.ts';

/** How many pairs of neighbours share a day, and how many do not, before a dossier is seen. Judgement. */
const TOGETHER = 0.5;
const APART = 100;

interface Shared {
  readonly event: number;
  readonly day: number;
  readonly cell: number;
}

/**
 * Lays out the days that sources name for two neighbours alike: releases that stand next to each
 * other in some source's list.
 *
 * @returns `nNeighbours` pairs in all; `shared…` for each event its part in the days named alike
 */
export function laySharedDays(
  links: readonly (readonly Link[])[],
  statements: readonly Statement[],
  cells: CellArrays,
  nEvents: number,
) {
  const named = namedDays(statements, nEvents);
  const shared: Shared[][] = Array.from({ length: nEvents }, () => []);
  const pairs = new Set<string>();
  const add = (e: number, event: number, day: number) => {
    const slice = sliceOf(cells, e);
    shared[e]!.push({ event, day, cell: slice.from + cellOfDay(slice, day) });
  };
  links.forEach((list, i) => {
    const a = statements[i]!.events[0]!;
    for (const { event: b, reading } of list) {
      if (reading !== ROW_SHIFT) continue;
      const pair = a < b ? `${a} ${b}` : `${b} ${a}`;
      if (a === b || pairs.has(pair)) continue;
      pairs.add(pair);
      for (const day of named[a]!) {
        if (!named[b]!.has(day)) continue;
        add(a, b, day);
        add(b, a, day);
      }
    }
  });
  const flat = shared.flat();
  return {
    nNeighbours: pairs.size,
    sharedStart: startsOf(shared),
    sharedEvent: Int32Array.from(flat, ({ event }) => event),
    sharedDay: Int32Array.from(flat, ({ day }) => day),
    sharedCell: Int32Array.from(flat, ({ cell }) => cell),
  };
}

function namedDays(statements: readonly Statement[], nEvents: number): Set<number>[] {
  const named = Array.from({ length: nEvents }, () => new Set<number>());
  for (const { property, events, values } of statements) {
    if (property !== 'on-sale' || events.length !== 1) continue;
    const { approximate, spans } = values[0]!;
    const [span, more] = spans;
    if (!approximate && !more && span!.lo === span!.hi) named[events[0]!]!.add(span!.lo);
  }
  return named;
}

/** Makes a day likelier in an event's `product` where a neighbour has it and both are named on it. */
export function pullTogether(problem: Problem, state: State, e: number): void {
  const { sharedStart, sharedEvent, sharedDay, sharedCell } = problem;
  for (let j = sharedStart[e]!; j < sharedStart[e + 1]!; j++) {
    if (state.day[sharedEvent[j]!] !== sharedDay[j]) continue;
    state.product[sharedCell[j]!]! *= pullOf(problem, state);
  }
}

/** How much likelier a day becomes for being a neighbour's. */
function pullOf({ first, last }: Problem, { together }: State): number {
  return 1 + ((last - first + 1) * together) / (1 - together);
}

/** Draws the share of neighbours that fall on one day; exact where neighbours form no circle. */
export function drawTogether(problem: Problem, state: State): void {
  const { nEvents, nNeighbours, sharedStart, sharedEvent, sharedDay } = problem;
  let yes = 0;
  for (let e = 0; e < nEvents; e++) {
    for (let j = sharedStart[e]!; j < sharedStart[e + 1]!; j++) {
      const day = sharedDay[j]!;
      if (sharedEvent[j]! > e && state.day[e] === day && state.day[sharedEvent[j]!] === day) yes++;
    }
  }
  const a = state.random.gamma(TOGETHER + yes);
  state.together = a / (a + state.random.gamma(APART + nNeighbours - yes));
}
