import type { Link } from '../links.ts';
import type { Problem } from '../problem.ts';
import { ROW_SHIFT, SIBLING } from '../readings.ts';
import type { Statement } from '../statements.ts';
import { isListed, type Kept } from './kept.ts';
import type { Row, Rows } from './rows.ts';

/** A statement on a release whose day is held, which bears on one that is dated anew. */
export interface HeldStatement {
  /** Its number, and its view, in the whole problem. */
  readonly index: number;
  readonly view: number;
  readonly links: readonly Link[];
}

/** Statements about those dated anew, and whence each may have been taken; events of the whole. */
export interface Around {
  /** Links of each statement that is dated anew. */
  readonly links: readonly (readonly Link[])[];
  readonly held: readonly HeldStatement[];
}

/**
 * Finds the statements beside those that are dated anew: of other releases of the same product, in
 * the rows above and below, and those that name one day for two releases in such rows.
 *
 * @param statements those to be dated anew
 * @param isPoint whether a release to be dated anew may have a day singly
 */
export function aroundOf(
  kept: Kept,
  touched: ReadonlySet<number>,
  statements: readonly Statement[],
  rows: Rows,
  isPoint: (event: number, day: number) => boolean,
): Around {
  const { problem, statements: all } = kept.fit.compiled;
  const views = new Set<number>();
  for (const e of touched) holdSiblings(kept, touched, e, isPoint, views);
  for (const [source, list] of rows.anew) {
    for (const { at, event } of list) {
      for (const row of rows.beside(source, at))
        if (row.anew < 0) holdRow(kept, row, (day) => isPoint(event, day), views);
    }
  }
  const freshRows = [...rows.anew.values()].flat();
  const placeOf = new Map(freshRows.map(({ anew, at }) => [anew, at]));
  const held = Array.from(views, (view): HeldStatement => {
    const index = problem.viewStatement[view]!;
    const statement = all[index]!;
    return { index, view, links: linksOf(kept, statement, rows, statement.claims[0]!) };
  });
  const links = statements.map((statement, i) => linksOf(kept, statement, rows, placeOf.get(i)!));
  return { links, held };
}

/** Whence a statement may have been taken: siblings of its release, and the rows above and below. */
function linksOf(kept: Kept, statement: Statement, rows: Rows, at: number): Link[] {
  if (!isListed(statement)) return [];
  const siblings = kept.fit.compiled.survey.siblings[statement.events[0]!]!;
  const beside = rows.beside(statement.source, at);
  return [
    ...siblings.map((event) => ({ event, reading: SIBLING, share: 1 / siblings.length })),
    ...beside.map(({ event }) => ({ event, reading: ROW_SHIFT, share: 0.5 })),
  ];
}

/** Holds the statements of other releases that may have taken an event's day for their own. */
function holdSiblings(
  { fit: { compiled } }: Kept,
  touched: ReadonlySet<number>,
  e: number,
  isPoint: (event: number, day: number) => boolean,
  views: Set<number>,
): void {
  const { problem, releases, survey } = compiled;
  for (const h of releases.eventsOfProduct.get(releases.events[e]!.product) ?? []) {
    if (touched.has(h) || !survey.siblings[h]!.includes(e)) continue;
    for (let v = problem.viewStart[h]!; v < problem.viewStart[h + 1]!; v++)
      if (namesDay(problem, v) && isPoint(e, problem.viewLo[v]!)) views.add(v);
  }
}

/** Holds a row above or below, and whatever names a day there that the release beside it may have. */
function holdRow(
  { fit: { compiled } }: Kept,
  { event, index }: Row,
  isPoint: (day: number) => boolean,
  views: Set<number>,
): void {
  const { problem } = compiled;
  for (let v = problem.viewStart[event]!; v < problem.viewStart[event + 1]!; v++) {
    const isRow = problem.viewStatement[v] === index;
    if (isRow || (namesDay(problem, v) && isPoint(problem.viewLo[v]!))) views.add(v);
  }
}

/** Whether a view is of an on-sale statement that names one day of one release. */
export function namesDay({ viewLo, viewHi, viewRate, viewRing }: Problem, v: number): boolean {
  return viewLo[v] === viewHi[v] && viewRate[v]! >= 0 && viewRing[v] === v;
}
