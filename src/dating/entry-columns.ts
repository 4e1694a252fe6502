import {
  approximateEntries,
  coarseEntries,
  type Entries,
  type EventCells,
  exactEntries,
  laggedEntries,
  overlaps,
} from './entries.ts';
import { widened } from './grow.ts';
import { FEW_DAYS_REACH } from './kernels.ts';
import { MAX_LAGS, type Problem } from './problem.ts';
import { NEAR_MOMENT, OTHER_MOMENT } from './readings.ts';
import { breadth, type Statement } from './statements.ts';

/** Entries one after the other. */
class EntryList implements Entries {
  length = 0;
  private cell = new Uint16Array(4096);
  private reading = new Uint8Array(4096);
  private coef = new Float32Array(4096);

  add(cell: number, reading: number, coefficient: number) {
    if (this.length === this.cell.length) {
      this.cell = widened(this.cell);
      this.reading = widened(this.reading);
      this.coef = widened(this.coef);
    }
    this.cell[this.length] = cell;
    this.reading[this.length] = reading;
    this.coef[this.length++] = coefficient;
  }

  done() {
    return {
      cell: this.cell.subarray(0, this.length),
      reading: this.reading.subarray(0, this.length),
      coef: this.coef.subarray(0, this.length),
    };
  }
}

/** Views above which a lag's misses are looked for near by only. */
const MANY = 3000;

/** Collects the sparse parts of the likelihood, view by view. */
export class EntryColumns {
  private readonly start: Int32Array;
  private readonly entries = new EntryList();
  private readonly lagStart: Int32Array;
  private readonly lagged = new EntryList();
  /** Days about another moment within which a value may have missed it. */
  private readonly reach: number;

  constructor(nViews: number) {
    this.reach = nViews > MANY ? 2 : FEW_DAYS_REACH;
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
    const { entries } = this;
    for (const value of values) {
      const weight = value.weight * (value.uncertain ? 0.75 : 1);
      const exact = value.spans.every(({ lo, hi }) => lo === hi && within(calendar, lo));
      if (exact && !value.approximate) {
        for (const { lo } of value.spans) exactEntries(lo, cells, calendar, weight, entries);
      } else if (exact)
        for (const { lo } of value.spans) approximateEntries(lo, cells, weight, entries);
      else
        coarseEntries(
          value.spans,
          cells,
          value.approximate ? Math.max(10, breadth(value.spans) / 2) : 0,
          weight,
          entries,
        );
    }
    for (let l = 0; l < MAX_LAGS; l++) {
      if (l < nLags[source]!) this.addLag(values[0]!, lags[source * MAX_LAGS + l]!, cells);
      this.lagStart[v * MAX_LAGS + l + 1] = this.lagged.length;
    }
  }

  private addLag(value: Statement['values'][number], lag: number, cells: EventCells) {
    const { lo, hi } = value.spans[0]!;
    if (value.spans.length === 1 && lo === hi) {
      laggedEntries(lo - lag, cells, value.weight, this.reach, this.lagged);
      return;
    }
    for (const span of value.spans) {
      overlaps(cells, span.lo - lag, span.hi - lag, (k, share) => {
        this.lagged.add(k, OTHER_MOMENT, value.weight * share);
        this.lagged.add(k, NEAR_MOMENT, value.weight * share);
      });
    }
  }

  close(v: number) {
    this.start[v + 1] = this.entries.length;
    for (let l = 1; l <= MAX_LAGS; l++) this.lagStart[v * MAX_LAGS + l] ||= this.lagged.length;
  }

  done() {
    const entries = this.entries.done();
    const lagged = this.lagged.done();
    return {
      entryStart: this.start,
      entryCell: entries.cell,
      entryReading: entries.reading,
      entryCoef: entries.coef,
      lagStart: this.lagStart,
      lagCell: lagged.cell,
      lagReading: lagged.reading,
      lagCoef: lagged.coef,
    };
  }
}

/** Whether a day, and the days a year about it, lie within the calendar. */
function within({ first, year }: Problem['calendar'], day: number): boolean {
  return day >= first + 400 && day < first + year.length - 400;
}
