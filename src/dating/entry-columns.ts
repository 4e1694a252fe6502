import {
  approximateEntries,
  cellOfDay,
  coarseEntries,
  type EventCells,
  exactEntries,
  overlaps,
} from './entries.ts';
import { Column } from './grow.ts';
import { MAX_LAGS, type Problem } from './problem.ts';
import { NEAR_MOMENT, OTHER_MOMENT } from './readings.ts';
import { breadth, type Statement } from './statements.ts';

/** Collects the sparse parts of the likelihood, view by view. */
export class EntryColumns {
  private readonly start: Int32Array;
  private readonly cell = new Column();
  private readonly reading = new Column();
  private readonly coef = new Column();
  private readonly lagStart: Int32Array;
  private readonly lagCell = new Column();
  private readonly lagReading = new Column();
  private readonly lagCoef = new Column();

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
      const exact = value.spans.every(({ lo, hi }) => lo === hi && within(calendar, lo));
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
      this.pushLag(cellOfDay(cells, lo - lag), OTHER_MOMENT, value.weight);
      this.pushLag(cellOfDay(cells, lo - lag - 1), NEAR_MOMENT, value.weight / 2);
      this.pushLag(cellOfDay(cells, lo - lag + 1), NEAR_MOMENT, value.weight / 2);
      return;
    }
    for (const span of value.spans) {
      overlaps(cells, span.lo - lag, span.hi - lag, (k, share) => {
        this.pushLag(k, OTHER_MOMENT, value.weight * share);
        this.pushLag(k, NEAR_MOMENT, value.weight * share);
      });
    }
  }

  private pushLag(k: number, reading: number, coefficient: number) {
    if (k < 0) return;
    this.lagCell.push(k);
    this.lagReading.push(reading);
    this.lagCoef.push(coefficient);
  }

  close(v: number) {
    this.start[v + 1] = this.cell.length;
    for (let l = 1; l <= MAX_LAGS; l++) this.lagStart[v * MAX_LAGS + l] ||= this.lagCell.length;
  }

  done() {
    return {
      entryStart: this.start,
      entryCell: new Uint16Array(this.cell.done()),
      entryReading: new Uint8Array(this.reading.done()),
      entryCoef: new Float32Array(this.coef.done()),
      lagStart: this.lagStart,
      lagCell: new Uint16Array(this.lagCell.done()),
      lagReading: new Uint8Array(this.lagReading.done()),
      lagCoef: new Float32Array(this.lagCoef.done()),
    };
  }
}

/** Whether a day, and the days a year about it, lie within the calendar. */
function within({ first, year }: Problem['calendar'], day: number): boolean {
  return day >= first + 400 && day < first + year.length - 400;
}
