import type { DossierPrices } from '../../dossier/index.ts';
import { sayDay } from '../../evidence/index.ts';
import type { BackTest, LeftOut, Price, Prices } from '../../market/index.ts';
import type { Called } from './called.ts';
import { amount } from './numbers.ts';
import { type Row, tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { counted, percent } from './words.ts';

const NO_PROMISE =
  'Half of the next sales, up to 75 days on, should be above the price; eight of ten within the range, odd ones included. No promise: a market can turn.';

/** Above this a sale is listed as odd. */
const ODD = 0.5;

/**
 * Prices for reading: of each printing raw, the grades that were sold and the top ones, or every
 * grade of one printing; then odd sales and what no price was learned from.
 */
export function* valueReport(
  found: DossierPrices,
  prices: Prices,
  called: Called,
  back: BackTest,
  only: string | undefined,
  width: number,
): Generator<string> {
  const { ground, home, leftOut, assumed } = found;
  const { sales, on, services } = ground;
  yield `Prices in ${home.currency} as of ${sayDay(on)}, from ${counted(sales.length, 'sale')}\n\n`;
  const tops = new Set(services.map(({ id, grades, top }) => `${id} ${top || grades.at(-1)}`));
  const rows: Row[] = [];
  for (const [id, all] of prices.of) {
    if (only !== undefined && id !== only) continue;
    const shown = all.filter(
      ({ service, grade, sales: own }) =>
        only !== undefined || service === null || own > 0 || tops.has(`${service} ${grade}`),
    );
    rows.push(
      ...shown.map((price, i) => [i === 0 ? called.printing(id) : '', ...cellsOf(price, services)]),
    );
  }
  const columns = [
    { head: 'printing' },
    { head: 'as' },
    { head: 'next sale', align: 'right' },
    { head: '8 of 10 within', align: 'right' },
    { head: 'sales', align: 'right' },
  ] as const;
  yield tableOf(columns, rows, width);
  yield `\n${wrapped(`${NO_PROMISE} ${backWords(back)}`, width).join('\n')}\n`;
  yield oddReport(found, prices, called, width);
  yield leftReport(leftOut, assumed, width);
}

function backWords({ sales, inside, error, days }: BackTest): string {
  if (error === null) return `In the last ${days} days nothing was sold to try that on.`;
  return `Tried on the last ${days} days, foretold from the sales before: ${inside} of ${counted(sales, 'sale')} fell within; half were off by less than ${percent(Math.expm1(error))}.`;
}

function cellsOf(
  { service, grade, price, interval80: [low, high], sales }: Price,
  services: DossierPrices['ground']['services'],
): string[] {
  const title = services.find(({ id }) => id === service)?.id ?? '';
  return [
    service === null ? 'raw' : `${title} ${grade}`,
    amount(price),
    `${amount(low)} – ${amount(high)}`,
    String(sales),
  ];
}

function oddReport(
  { ground, rows }: DossierPrices,
  { odd }: Prices,
  called: Called,
  width: number,
): string {
  const listed = ground.sales
    .map((sale, i) => ({ sale, row: rows[i] ?? 0, p: odd[i] ?? 0 }))
    .filter(({ p }) => p > ODD);
  if (listed.length === 0) return '';
  const columns = [
    { head: 'row', align: 'right' },
    { head: 'day' },
    { head: 'sold' },
    { head: 'for', align: 'right' },
    { head: 'odd', align: 'right' },
  ] as const;
  const cells = listed.map(
    ({ sale, row, p }): Row => [
      String(row),
      sayDay(sale.day, true),
      `${sale.printings.map(called.printing).join(' or ')}, ${sale.service === null ? 'raw' : `${sale.service} ${sale.grade}`}`,
      amount(sale.price),
      percent(p),
    ],
  );
  return `\nOdd sales, counted for little\n\n${tableOf(columns, cells, width)}`;
}

function leftReport(
  leftOut: readonly LeftOut[],
  assumed: readonly string[],
  width: number,
): string {
  const reasons = new Map<string, number[]>();
  for (const { row, why } of leftOut) reasons.set(why, [...(reasons.get(why) ?? []), row]);
  const lines = [...reasons].map(([why, rows]) => {
    const some = rows.slice(0, 8).join(', ') + (rows.length > 8 ? ' …' : '');
    return `${counted(rows.length, 'row')} of sales.csv left out, since ${why}: ${some}`;
  });
  const all = [...lines, ...assumed];
  if (all.length === 0) return '';
  return `\n${all.flatMap((line) => wrapped(line, width)).join('\n')}\n`;
}
