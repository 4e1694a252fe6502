import type { Statement } from '../statements.ts';
import { isListed, type Kept } from './kept.ts';

/** A row of a source's list: a statement of the whole (`index`), or one that is dated anew (`anew`). */
export interface Row {
  readonly event: number;
  readonly at: number;
  readonly index: number;
  readonly anew: number;
}

/** The rows of each source's list, as they stand after a change. */
export class Rows {
  /** Rows that are dated anew, by source, in order. */
  readonly anew: ReadonlyMap<number, readonly Row[]>;
  private readonly kept: Kept;
  private readonly touched: ReadonlySet<number>;

  /** @param placeOf where a statement's first claim stands among the claims there were */
  constructor(
    kept: Kept,
    touched: ReadonlySet<number>,
    statements: readonly Statement[],
    placeOf: (statement: Statement) => number,
  ) {
    this.kept = kept;
    this.touched = touched;
    const anew = new Map<number, Row[]>();
    statements.forEach((statement, i) => {
      if (!isListed(statement)) return;
      const list = anew.get(statement.source) ?? [];
      anew.set(statement.source, list);
      list.push({ event: statement.events[0]!, at: placeOf(statement), index: -1, anew: i });
    });
    this.anew = anew;
  }

  /** The rows above and below a place in a source's list. */
  beside(source: number, at: number): Row[] {
    const list = this.kept.lists[source]!;
    let j = this.firstFrom(list, at);
    let above = j - 1;
    while (above >= 0 && this.isTouched(list[above]!)) above--;
    if (j < list.length && this.placeOf(list[j]!) === at) j++;
    while (j < list.length && this.isTouched(list[j]!)) j++;
    const anew = this.anew.get(source) ?? [];
    const nearest = (old: Row | undefined, fresh: Row | undefined, sign: 1 | -1) =>
      !old || (fresh && sign * (fresh.at - old.at) < 0) ? fresh : old;
    const up = nearest(
      this.rowOf(list[above]),
      anew.findLast((row) => row.at < at),
      -1,
    );
    const down = nearest(
      this.rowOf(list[j]),
      anew.find((row) => row.at > at),
      1,
    );
    return [up, down].filter((row) => row !== undefined);
  }

  /** The place in a list of the first statement that stands there or later. */
  private firstFrom(list: readonly number[], at: number): number {
    let low = 0;
    let high = list.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.placeOf(list[middle]!) < at) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  private rowOf(index: number | undefined): Row | undefined {
    if (index === undefined) return undefined;
    const { events } = this.kept.fit.compiled.statements[index]!;
    return { event: events[0]!, at: this.placeOf(index), index, anew: -1 };
  }

  private placeOf(index: number): number {
    return this.kept.fit.compiled.statements[index]!.claims[0]!;
  }

  private isTouched(index: number): boolean {
    return this.touched.has(this.kept.fit.compiled.statements[index]!.events[0]!);
  }
}
