import { type Columns, columnsOf } from './columns.ts';
import { type Factor, factorsOf } from './factors.ts';
import type { PriceGround } from './types.ts';

/** Days that share one step of the market's course. */
export const STEP_DAYS = 30;
const YEAR = 365.25;

/** Sales, printings and columns as numbers, ready to be fitted. */
export interface Layout {
  readonly columns: Columns;
  readonly printings: number;
  /** Logarithm of a raw price before any sale is seen. */
  readonly before: number;
  readonly factors: readonly Factor[];
  /** Logarithm of the graded count of each printing about its mean, 0 where not known. */
  readonly plenty: Float64Array;
  /** Steps of the market's course; 0 is the step that ends on the day asked for. */
  readonly steps: number;
  readonly sales: {
    readonly count: number;
    /** Natural logarithm of the price. */
    readonly log: Float64Array;
    readonly column: Uint16Array;
    readonly step: Uint16Array;
    /** Years from the day asked for, below 0. */
    readonly years: Float64Array;
    /** Cell that each sale counts for; of those that may be of several, the one that is drawn. */
    readonly cell: Int32Array;
  };
  /** Sales that may be of several printings, with the cells they may count for. */
  readonly open: readonly { readonly sale: number; readonly cells: readonly number[] }[];
  readonly cells: {
    readonly count: number;
    readonly column: Uint16Array;
    readonly printing: Int32Array;
    /** Cells of printing p stand from `from[p]` to before `from[p + 1]`. */
    readonly from: Int32Array;
    /** Cell by printing and column, -1 where no sale may be of it. */
    readonly at: (printing: number, column: number) => number;
  };
}

/**
 * Lays out what prices are learned from.
 *
 * @throws {RangeError} for a sale of an unknown printing or grade, after the day or at no price
 */
export function layoutOf({ printings, services, sales, on, before }: PriceGround): Layout {
  const columns = columnsOf(services);
  const index = new Map(printings.map(({ id }, i) => [id, i]));
  const keys = new Set<number>();
  const placed = sales.map((sale) => {
    const column = columns.of(sale.service, sale.grade);
    const among = sale.printings.map((id) => index.get(id));
    if (
      column === undefined ||
      among.length === 0 ||
      among.includes(undefined) ||
      !(sale.price > 0) ||
      sale.day > on
    )
      throw new RangeError(`a sale cannot be placed: ${JSON.stringify(sale)}`);
    const own = (among as number[]).map((printing) => printing * columns.count + column);
    for (const key of own) keys.add(key);
    return { sale, column, own };
  });
  const sorted = [...keys].sort((a, b) => a - b);
  const cellOf = new Map(sorted.map((key, i) => [key, i]));
  const from = new Int32Array(printings.length + 1);
  for (const key of sorted) (from[Math.floor(key / columns.count) + 1] as number)++;
  for (let p = 0; p < printings.length; p++) (from[p + 1] as number) += from[p] as number;
  const steps = placed.map(({ sale }) => Math.floor((on - sale.day) / STEP_DAYS));
  return {
    columns,
    printings: printings.length,
    before: Math.log(before),
    factors: factorsOf(printings),
    plenty: plentyOf(printings.map(({ graded }) => graded)),
    steps: 1 + steps.reduce((a, b) => Math.max(a, b), 0),
    sales: {
      count: sales.length,
      log: Float64Array.from(placed, ({ sale }) => Math.log(sale.price)),
      column: Uint16Array.from(placed, ({ column }) => column),
      step: Uint16Array.from(steps),
      years: Float64Array.from(placed, ({ sale }) => (sale.day - on) / YEAR),
      cell: Int32Array.from(placed, ({ own }) => cellOf.get(own[0] as number) as number),
    },
    open: placed.flatMap(({ own }, sale) =>
      own.length < 2 ? [] : [{ sale, cells: own.map((key) => cellOf.get(key) as number) }],
    ),
    cells: {
      count: sorted.length,
      column: Uint16Array.from(sorted, (key) => key % columns.count),
      printing: Int32Array.from(sorted, (key) => Math.floor(key / columns.count)),
      from,
      at: (printing, column) => cellOf.get(printing * columns.count + column) ?? -1,
    },
  };
}

function plentyOf(graded: readonly (number | null)[]): Float64Array {
  const known = graded.flatMap((count) => (count === null ? [] : [Math.log1p(count)]));
  const mean = known.reduce((a, b) => a + b, 0) / Math.max(1, known.length);
  return Float64Array.from(graded, (count) => (count === null ? 0 : Math.log1p(count) - mean));
}
