import type { PrintingPrices } from '../../contract/index.ts';
import { type Day, sayDay } from '../../evidence/index.ts';
import { Num } from '../marks/index.ts';
import { count } from '../words/index.ts';
import { amount, cellName, explainSale } from './tell.ts';

interface Props {
  readonly prices: PrintingPrices;
  readonly titles: ReadonlyMap<string, string>;
}

/** Sales listed, the newest. */
const SHOWN = 60;

/** Every sale, asking price and unpaid sale in words, the newest first. */
export function SaleTable({ prices: { sales, currency }, titles }: Props) {
  const newest = [...sales].sort((a, b) => (b.day ?? 0) - (a.day ?? 0));
  return (
    <section>
      <h2>{count(sales.length, 'row')} of sales.csv</h2>
      {sales.length === 0 ? (
        <p className="empty">
          No sale of it at all: the price comes from printings like it, and its range is wide.
        </p>
      ) : null}
      <div className="wide">
        <table className="list brief price-sales">
          <thead>
            <tr>
              <th scope="col">Day</th>
              <th scope="col">As</th>
              <th scope="col">How</th>
              <th scope="col">Where</th>
              <th scope="col" className="figure">
                {currency}
              </th>
            </tr>
          </thead>
          <tbody>
            {newest.slice(0, SHOWN).map((sale) => (
              <tr key={sale.row}>
                <th scope="row" className="no-break">
                  {sale.day === null ? 'no day' : sayDay(sale.day as Day, true)}
                </th>
                <td>{cellName(sale, titles)}</td>
                <td>{said(sale.kind, sale.odd)}</td>
                <td className="detail">{sale.venue}</td>
                <td className="figure">
                  <Num why={explainSale(sale, titles, currency)}>
                    {sale.home === null ? `${sale.price} ${sale.currency}` : amount(sale.home)}
                  </Num>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {sales.length > SHOWN ? (
        <p className="detail">And {sales.length - SHOWN} earlier ones, all in the picture.</p>
      ) : null}
    </section>
  );
}

function said(kind: 'sold' | 'asking' | 'unpaid', odd: number | null): string {
  if (kind === 'asking') return 'asked only';
  if (kind === 'unpaid') return 'not paid';
  return odd !== null && odd > 0.5 ? 'sold, odd' : 'sold';
}
