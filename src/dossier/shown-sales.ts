import type { Day } from '../evidence/index.ts';
import type { Prices, SaleRow, UsedRate } from '../market/index.ts';
import { saleRowsOf } from './market-rows.ts';
import type { DossierPrices } from './price-ground.ts';
import type { Dossier } from './types.ts';

/** A row of `sales.csv` as it is shown: whatever no price is learned from is there too. */
export interface ShownSale extends SaleRow {
  readonly venue: string;
  /** In the desk's currency at the rate of its day; null where that cannot be told. */
  readonly home: number | null;
  /** The day of the rate that was taken; null where none was needed. */
  readonly rateOf: Day | null;
  /** The probability that it is no usual sale; null where no price is learned from it. */
  readonly odd: number | null;
  /** Why no price is learned from it; null where one is. */
  readonly leftOut: string | null;
}

/** Every sale, asking price and unpaid sale of a dossier that may be of some printing. */
export function shownSales(
  dossier: Dossier,
  { rows, leftOut, rates, home, ground }: DossierPrices,
  { odd }: Pick<Prices, 'odd'>,
): ShownSale[] {
  const oddOf = new Map(rows.map((row, at) => [row, odd[at] ?? null]));
  const whyOf = new Map(leftOut.map(({ row, why }) => [row, why]));
  const homeOf = new Map(rows.map((row, at) => [row, ground.sales[at]?.price ?? null]));
  const table = dossier.tables.get('sales.csv');
  return saleRowsOf(dossier)
    .filter(({ printings }) => printings.length > 0)
    .map((sale) => {
      const from = sale.currency === null ? undefined : rates.on(sale.currency, sale.day);
      const to = rates.on(home.currency, sale.day);
      return {
        ...sale,
        venue: table?.value(sale.row, 'venue') ?? '',
        home: homeOf.get(sale.row) ?? turned(sale.price, from, to),
        rateOf: from?.currency === to?.currency ? null : (from?.of ?? to?.of ?? null),
        odd: oddOf.get(sale.row) ?? null,
        leftOut: whyOf.get(sale.row) ?? null,
      };
    });
}

/** A price by two rates, for showing: good to the digits of a floating-point number. */
function turned(
  price: string | null,
  from: UsedRate | undefined,
  to: UsedRate | undefined,
): number | null {
  if (price === null || !from || !to) return null;
  const value = (Number(price) * unitsOf(to)) / unitsOf(from);
  return value > 0 ? value : null;
}

function unitsOf({ perEur: { over, under } }: UsedRate): number {
  return Number(over) / Number(under);
}
