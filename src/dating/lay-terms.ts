import type { DateProperty, Evidence } from '../evidence/index.ts';
import { type CellArrays, sliceOf } from './cells.ts';
import type { EventCells } from './entries.ts';
import { EntryColumns } from './entry-columns.ts';
import type { Releases } from './events.ts';
import { binOf, FIXED_HISTS, histOf, UNLISTED_HIST } from './histograms.ts';
import { breadth, type Span, type Statement } from './statements.ts';
import type { Survey } from './survey.ts';
import { seriesHists } from './tables.ts';
import type { Views } from './views.ts';

/** Lays out what each view's likelihood is made of: bins of its histogram and sparse entries. */
export function layTerms(
  statements: readonly Statement[],
  views: Views,
  cells: CellArrays,
  { lags, calendar, filled, covers }: Pick<Survey, 'lags' | 'calendar' | 'filled' | 'covers'>,
  evidence: Pick<Evidence, 'products'>,
  releases: Pick<Releases, 'events'>,
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
    viewCover: new Float32Array(nViews),
    ...seriesHists(statements, views, evidence, releases, FIXED_HISTS, histOf),
  };
  const entries = new EntryColumns(nViews);
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
    terms.viewCover[v] = covers[views.viewStatement[v]!]!;
    terms.viewScale[v] =
      statement.property === 'on-sale' || histOf(statement.property) < UNLISTED_HIST
        ? breadth(spans)
        : 1;
    if (statement.property === 'on-sale') entries.addView(v, statement, slice, calendar, lags);
    entries.close(v);
  }
  return { ...terms, ...entries.done() };
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
  for (let k = 0; k < cells.count; k++) {
    const day = (cells.lo[cells.from + k]! + cells.hi[cells.from + k]!) >> 1;
    const { lo, hi } = spans.length === 1 ? spans[0]! : nearest(spans, day);
    bins[at + k] = binOf(property, lo, hi, day, yearOf);
  }
}

function nearest(spans: readonly Span[], day: number): Span {
  const gap = ({ lo, hi }: Span) => Math.max(lo - day, day - hi, 0);
  return spans.reduce((best, span) => (gap(span) < gap(best) ? span : best));
}
