import { type DateProperty, type Evidence, weekdayOf } from '../evidence/index.ts';
import { cellsOf } from './cells.ts';
import {
  approximateEntries,
  cellOfDay,
  coarseEntries,
  type EventCells,
  exactEntries,
  overlaps,
} from './entries.ts';
import { type Releases, releasesOf } from './events.ts';
import { Column } from './grow.ts';
import { binOf, FIXED_HISTS, histOf, UNLISTED_HIST } from './histograms.ts';
import { calendarOf } from './kernels.ts';
import { candidateLags } from './lags.ts';
import { filledShares, type Link, linksOf, siblingsOf } from './links.ts';
import { MAX_LAGS, type Problem } from './problem.ts';
import { type Statement, statementsOf } from './statements.ts';
import { rangeOf, supportsOf } from './support.ts';
import { erasOf, ratesOf, runsOf, seriesHists } from './tables.ts';

export interface Compiled {
  readonly problem: Problem;
  readonly statements: readonly Statement[];
  readonly releases: Releases;
}

/** Dossiers above this many claims look at fewer single days round each claim. */
const LARGE = 3000;

/** Lays a dossier out for the sampler. */
export function compile(evidence: Evidence): Compiled {
  const releases = releasesOf(evidence);
  const statements = statementsOf(evidence, releases);
  const { first, last } = rangeOf(statements);
  const calendar = calendarOf(first - 800, Math.max(last, first) + 800);
  const nEvents = releases.events.length;
  const nSources = evidence.sources.length;
  const lags = candidateLags(statements, nSources, nEvents);
  const siblings = siblingsOf(releases);
  const reach = statements.length > LARGE ? 2 : 7;
  const supports = supportsOf(statements, nEvents, siblings, lags, calendar, reach);
  const cells = layCells(supports, first, last);
  const views = layViews(statements, nEvents);
  const links = layLinks(linksOf(statements, siblings), views, cells);
  const eras = erasOf(statements, nEvents);
  const problem: Problem = {
    first,
    last,
    calendar,
    nEvents,
    nSources,
    ...cells,
    ...habitsOf(releases),
    ...views,
    ...layTerms(statements, views, cells, lags, calendar, evidence, releases),
    ...lags,
    ...links,
    ...ratesOf(statements, views, releases, eras),
    ...runsOf(statements, views, releases),
    ...layOrders(releases),
  };
  return { problem, statements, releases };
}

type CellArrays = Pick<Problem, 'cellStart' | 'cellLo' | 'cellHi' | 'cellWeekday' | 'cellWeekdays'>;

function layCells(
  supports: ReturnType<typeof supportsOf>,
  first: number,
  last: number,
): CellArrays {
  const int = (n: number) => new Int32Array(n);
  const lo = new Column(int);
  const hi = new Column(int);
  const weekdays = new Column((n) => new Uint16Array(n));
  const cellStart = new Int32Array(supports.length + 1);
  supports.forEach(({ points, near }, e) => {
    const cells = cellsOf(points, near, first, last);
    for (const d of cells.lo) lo.push(d);
    for (const d of cells.hi) hi.push(d);
    for (const n of cells.weekdays) weekdays.push(n);
    cellStart[e + 1] = lo.length;
  });
  const hiDays = hi.done();
  return {
    cellStart,
    cellLo: lo.done(),
    cellHi: hiDays,
    cellWeekday: Int8Array.from(lo.done(), (d, k) => (hiDays[k] === d ? weekdayOf(d) - 1 : -1)),
    cellWeekdays: weekdays.done(),
  };
}

export interface Views {
  readonly nViews: number;
  readonly viewStart: Int32Array;
  readonly viewEvent: Int32Array;
  readonly viewStatement: Int32Array;
  readonly viewSource: Int32Array;
  readonly viewRing: Int32Array;
  readonly viewShare: Float32Array;
  readonly viewLo: Int32Array;
  readonly viewHi: Int32Array;
  readonly firstView: Int32Array;
}

function layViews(statements: readonly Statement[], nEvents: number): Views {
  const viewStart = new Int32Array(nEvents + 1);
  for (const { events } of statements) for (const e of events) viewStart[e + 1]!++;
  for (let e = 0; e < nEvents; e++) viewStart[e + 1]! += viewStart[e]!;
  const n = viewStart[nEvents]!;
  const next = viewStart.slice();
  const out = {
    nViews: n,
    viewStart,
    viewEvent: new Int32Array(n),
    viewStatement: new Int32Array(n),
    viewSource: new Int32Array(n),
    viewRing: new Int32Array(n),
    viewShare: new Float32Array(n),
    viewLo: new Int32Array(n),
    viewHi: new Int32Array(n),
    firstView: new Int32Array(statements.length),
  };
  statements.forEach((statement, i) => {
    const ids = statement.events.map((e) => next[e]!++);
    const spans = statement.values[0]!.spans;
    ids.forEach((v, j) => {
      out.viewEvent[v] = statement.events[j]!;
      out.viewStatement[v] = i;
      out.viewSource[v] = statement.source;
      out.viewRing[v] = ids[(j + 1) % ids.length]!;
      out.viewShare[v] = 1 / ids.length;
      out.viewLo[v] = Math.max(-1e9, spans[0]!.lo);
      out.viewHi[v] = Math.min(1e9, spans.at(-1)!.hi);
    });
    out.firstView[i] = ids[0]!;
  });
  return out;
}

function layLinks(links: readonly Link[][], views: Views, cells: CellArrays) {
  const linkStart = new Int32Array(views.nViews + 1);
  const event = new Column((n) => new Int32Array(n));
  const reading = new Column((n) => new Uint8Array(n));
  const share = new Column((n) => new Float32Array(n));
  const back: BackLink[][] = Array.from({ length: views.viewStart.length - 1 }, () => []);
  for (let v = 0; v < views.nViews; v++) {
    const i = views.viewStatement[v]!;
    if (views.firstView[i] === v) {
      for (const link of links[i]!) {
        const slice = sliceOf(cells, link.event);
        const k = views.viewLo[v] === views.viewHi[v] ? cellOfDay(slice, views.viewLo[v]!) : -1;
        if (k >= 0) back[link.event]!.push({ link: event.length, view: v, cell: slice.from + k });
        event.push(link.event);
        reading.push(link.reading);
        share.push(link.share);
      }
    }
    linkStart[v + 1] = event.length;
  }
  const flat = back.flat();
  return {
    linkStart,
    linkEvent: event.done(),
    linkReading: reading.done(),
    linkShare: share.done(),
    backStart: startsOf(back),
    backLink: Int32Array.from(flat, ({ link }) => link),
    backView: Int32Array.from(flat, ({ view }) => view),
    backCell: Int32Array.from(flat, ({ cell }) => cell),
  };
}

interface BackLink {
  readonly link: number;
  readonly view: number;
  readonly cell: number;
}

/** Offsets of lists that are laid end to end. */
function startsOf(lists: readonly (readonly unknown[])[]): Int32Array {
  const start = new Int32Array(lists.length + 1);
  lists.forEach((list, j) => {
    start[j + 1] = start[j]! + list.length;
  });
  return start;
}

function sliceOf({ cellStart, cellLo, cellHi }: CellArrays, e: number): EventCells {
  const from = cellStart[e]!;
  return { lo: cellLo, hi: cellHi, from, count: cellStart[e + 1]! - from };
}

function habitsOf(releases: Releases) {
  const markets = new Map<string, number>();
  const habits = new Map<string, number>();
  const index = (map: Map<string, number>, key: string) => {
    const known = map.get(key);
    if (known !== undefined) return known;
    map.set(key, map.size);
    return map.size - 1;
  };
  const marketOf = Int32Array.from(releases.events, ({ market }) => index(markets, market));
  const habitOf = Int32Array.from(releases.events, ({ market, channel }) =>
    index(habits, `${market}\n${channel}`),
  );
  return { marketOf, habitOf, nMarkets: markets.size, nHabits: habits.size };
}

function layTerms(
  statements: readonly Statement[],
  views: Views,
  cells: CellArrays,
  lags: { readonly lags: Int32Array; readonly nLags: Int32Array },
  calendar: Problem['calendar'],
  evidence: Evidence,
  releases: Releases,
) {
  const { nViews } = views;
  const rowStart = new Int32Array(nViews + 1);
  for (let v = 0; v < nViews; v++) {
    const e = views.viewEvent[v]!;
    rowStart[v + 1] = rowStart[v]! + cells.cellStart[e + 1]! - cells.cellStart[e]!;
  }
  const terms = {
    rowStart,
    bins: new Uint8Array(rowStart[nViews]!),
    viewScale: new Float32Array(nViews).fill(1),
    viewDoubt: new Float32Array(nViews),
    viewFilled: new Float32Array(nViews),
    ...seriesHists(statements, views, evidence, releases, FIXED_HISTS, histOf),
  };
  const entries = new EntryColumns(nViews);
  const filled = filledShares(statements);
  const yearOf = (d: number) =>
    calendar.year[Math.min(calendar.year.length - 1, Math.max(0, d - calendar.first))]!;
  for (let v = 0; v < nViews; v++) {
    const statement = statements[views.viewStatement[v]!]!;
    const e = views.viewEvent[v]!;
    const slice = sliceOf(cells, e);
    fillBins(terms.bins, rowStart[v]!, statement.property, statement, slice, yearOf);
    const { spans, uncertain } = statement.values[0]!;
    terms.viewDoubt[v] = uncertain ? 1 : 0;
    terms.viewFilled[v] = filled[views.viewStatement[v]!]!;
    terms.viewScale[v] =
      statement.property === 'on-sale' || histOf(statement.property) < UNLISTED_HIST
        ? breadth(spans)
        : 1;
    if (statement.property === 'on-sale') entries.addView(v, statement, slice, calendar, lags);
    entries.close(v);
  }
  return { ...terms, ...entries.done() };
}

function breadth(spans: Statement['values'][number]['spans']): number {
  const days = spans.reduce((sum, { lo, hi }) => sum + Math.min(hi - lo + 1, 3650), 0);
  return Math.min(days, 3650);
}

function fillBins(
  bins: Uint8Array,
  at: number,
  property: DateProperty,
  { values }: Statement,
  cells: EventCells,
  yearOf: (day: number) => number,
) {
  const spans = values[0]!.spans;
  const lo = spans[0]!.lo;
  const hi = spans.at(-1)!.hi;
  for (let k = 0; k < cells.count; k++) {
    const day = (cells.lo[cells.from + k]! + cells.hi[cells.from + k]!) >> 1;
    bins[at + k] = binOf(property, lo, hi, day, yearOf);
  }
}

/** Collects the sparse parts of the likelihood, view by view. */
class EntryColumns {
  private readonly start: Int32Array;
  private readonly cell = new Column((n) => new Uint16Array(n));
  private readonly reading = new Column((n) => new Uint8Array(n));
  private readonly coef = new Column((n) => new Float32Array(n));
  private readonly lagStart: Int32Array;
  private readonly lagCell = new Column((n) => new Uint16Array(n));
  private readonly lagCoef = new Column((n) => new Float32Array(n));

  constructor(nViews: number) {
    this.start = new Int32Array(nViews + 1);
    this.lagStart = new Int32Array(nViews * MAX_LAGS + 1);
  }

  addView(
    v: number,
    { values, source }: Statement,
    cells: EventCells,
    calendar: Problem['calendar'],
    { lags, nLags }: { readonly lags: Int32Array; readonly nLags: Int32Array },
  ) {
    const emit = (k: number, r: number, c: number) => {
      this.cell.push(k);
      this.reading.push(r);
      this.coef.push(c);
    };
    for (const value of values) {
      const weight = value.weight * (value.uncertain ? 0.75 : 1);
      const exact = value.spans.every(({ lo, hi }) => lo === hi && lo >= calendar.first + 400);
      if (exact && !value.approximate) {
        for (const { lo } of value.spans) exactEntries(lo, cells, calendar, weight, emit);
      } else if (exact)
        for (const { lo } of value.spans) approximateEntries(lo, cells, weight, emit);
      else
        coarseEntries(
          value.spans,
          cells,
          value.approximate ? Math.max(10, breadth(value.spans) / 2) : 0,
          weight,
          emit,
        );
    }
    for (let l = 0; l < MAX_LAGS; l++) {
      if (l < nLags[source]!) this.addLag(values[0]!, lags[source * MAX_LAGS + l]!, cells);
      this.lagStart[v * MAX_LAGS + l + 1] = this.lagCell.length;
    }
  }

  private addLag(value: Statement['values'][number], lag: number, cells: EventCells) {
    const { lo, hi } = value.spans[0]!;
    if (value.spans.length === 1 && lo === hi) {
      const k = cellOfDay(cells, lo - lag);
      if (k < 0) return;
      this.lagCell.push(k);
      this.lagCoef.push(value.weight);
      return;
    }
    for (const span of value.spans) {
      overlaps(cells, span.lo - lag, span.hi - lag, (k, share) => {
        this.lagCell.push(k);
        this.lagCoef.push(value.weight * share);
      });
    }
  }

  close(v: number) {
    this.start[v + 1] = this.cell.length;
    for (let l = 1; l <= MAX_LAGS; l++) this.lagStart[v * MAX_LAGS + l] ||= this.lagCell.length;
  }

  done() {
    return {
      entryStart: this.start,
      entryCell: this.cell.done(),
      entryReading: this.reading.done(),
      entryCoef: this.coef.done(),
      lagStart: this.lagStart,
      lagCell: this.lagCell.done(),
      lagCoef: this.lagCoef.done(),
    };
  }
}

function layOrders(releases: Releases) {
  const n = releases.events.length;
  const before: number[][] = Array.from({ length: n }, () => []);
  const after: number[][] = Array.from({ length: n }, () => []);
  for (const [a, b] of releases.orders) {
    before[b]!.push(a);
    after[a]!.push(b);
  }
  return {
    beforeStart: startsOf(before),
    before: Int32Array.from(before.flat()),
    afterStart: startsOf(after),
    after: Int32Array.from(after.flat()),
  };
}
