import type { Releases } from './events.ts';
import { ROW_SHIFT, SIBLING } from './readings.ts';
import type { Statement } from './statements.ts';

/** An event from which a statement may have taken its day by mistake. */
export interface Link {
  readonly event: number;
  readonly reading: number;
  readonly share: number;
}

const MOST_SIBLINGS = 10;

/** For each event, the others of the same product: other markets, waves, editions, channels. */
export function siblingsOf(releases: Releases): readonly (readonly number[])[] {
  return releases.events.map(({ product }, e) => {
    if (!product) return [];
    const list = releases.eventsOfProduct.get(product) ?? [];
    return list.filter((other) => other !== e).slice(0, MOST_SIBLINGS);
  });
}

/**
 * The events from which each on-sale statement may have been taken by mistake: siblings of its
 * event, and the rows above and below in its source's own list.
 */
export function linksOf(
  statements: readonly Statement[],
  siblings: readonly (readonly number[])[],
): Link[][] {
  const previous = new Map<number, number>();
  const links: Link[][] = statements.map(() => []);
  statements.forEach((statement, i) => {
    if (statement.property !== 'on-sale' || statement.events.length !== 1) return;
    const e = statement.events[0]!;
    const around = siblings[e]!;
    for (const event of around)
      links[i]!.push({ event, reading: SIBLING, share: 1 / around.length });
    const above = previous.get(statement.source);
    if (above !== undefined) {
      links[i]!.push({ event: statements[above]!.events[0]!, reading: ROW_SHIFT, share: 0.5 });
      links[above]!.push({ event: e, reading: ROW_SHIFT, share: 0.5 });
    }
    previous.set(statement.source, i);
  });
  return links;
}

/** Days among which a source that fills in picks one: some fourteen years. Judgement. */
const FILL_RANGE = 5000;

/** How often each source names each day, so that a day filled in for many is known for one. */
export class DayCounts {
  private readonly days = new Map<number, Map<number, number>>();
  private readonly totals = new Map<number, number>();
  private readonly under: DayCounts | undefined;

  /** @param under counts that these are added to */
  constructor(under?: DayCounts) {
    this.under = under;
  }

  /** Counts the day that a statement names (`by` 1), or takes it away (−1). */
  add(statement: Statement, by: 1 | -1): void {
    const day = namedDay(statement);
    if (Number.isNaN(day)) return;
    const { source } = statement;
    const map = this.days.get(source) ?? new Map<number, number>();
    this.days.set(source, map.set(day, (map.get(day) ?? 0) + by));
    this.totals.set(source, (this.totals.get(source) ?? 0) + by);
  }

  /** Statements of a source that name a day. */
  same(source: number, day: number): number {
    return (this.days.get(source)?.get(day) ?? 0) + (this.under?.same(source, day) ?? 0);
  }

  /** Statements of a source that name any day. */
  all(source: number): number {
    return (this.totals.get(source) ?? 0) + (this.under?.all(source) ?? 0);
  }
}

/** The one day that an on-sale statement names, or NaN. */
function namedDay({ property, values }: Statement): number {
  const { spans } = values[0]!;
  return property === 'on-sale' && spans.length === 1 && spans[0]!.lo === spans[0]!.hi
    ? spans[0]!.lo
    : Number.NaN;
}

/**
 * For each statement, the probability of its value if its source filled in one day for many. Of c
 * statements with one day among n, the first picks the day and pays for it, the others follow as in
 * a Chinese restaurant process (`aldous:1985`); each bears the same part of the product.
 */
export function filledShares(statements: readonly Statement[], counts: DayCounts): Float32Array {
  return Float32Array.from(statements, (s) => {
    const day = namedDay(s);
    if (Number.isNaN(day)) return 0;
    return filledShare(counts.same(s.source, day), counts.all(s.source));
  });
}

function filledShare(same: number, all: number): number {
  if (same < 3) return 0;
  let log = -Math.log(FILL_RANGE);
  for (let j = 1; j < same; j++) log += Math.log(j / all);
  return Math.exp(log / same);
}

/** Probability of the first day of the month that stands on a cover, where that month is meant. */
const FIRST_OF_COVER = 0.5;

/**
 * For each on-sale statement, the probability of its value if its source took the date on the cover
 * for the day of sale: of some source's cover date of the same release, in its own precision.
 */
export function coverShares(statements: readonly Statement[]): Float32Array {
  const covers = new Map<number, { lo: number; hi: number }[]>();
  for (const { property, events, values } of statements) {
    if (property !== 'cover-date') continue;
    for (const e of events) covers.set(e, [...(covers.get(e) ?? []), ...values[0]!.spans]);
  }
  return Float32Array.from(statements, ({ property, events, values }) => {
    if (property !== 'on-sale') return 0;
    const [span, more] = values[0]!.spans;
    if (more) return 0;
    return events.reduce((most, e) => Math.max(most, coverShare(span!, covers.get(e) ?? [])), 0);
  });
}

function coverShare(
  { lo, hi }: { readonly lo: number; readonly hi: number },
  covers: readonly { readonly lo: number; readonly hi: number }[],
): number {
  if (covers.some((cover) => cover.lo === lo && cover.hi === hi)) return 1;
  return covers.some((cover) => cover.lo === lo && lo === hi) ? FIRST_OF_COVER : 0;
}
