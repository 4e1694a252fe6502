import { Link, useParams } from '@tanstack/react-router';
import type { PrintingPrices } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Num, Screen } from '../marks/index.ts';
import { usePrices, usePrintingPrices } from '../wire/index.ts';
import { PriceOf } from './PriceOf.tsx';
import { SaleTable } from './SaleTable.tsx';
import { amount, cellName, explainPrice, sayBackTest } from './tell.ts';

/** What a copy of one printing may fetch, with every sale to be seen. */
export function PricePage() {
  const { id } = useParams({ from: '/prices/$id' });
  const book = useBook();
  const { version } = book.dossier;
  const { data: all } = usePrices(version);
  const { data } = usePrintingPrices(version, id);
  const name = book.names.get(id);
  const titles = new Map(all?.services.map((one) => [one.id, one.title]));
  return (
    <Screen title={`Prices: ${name?.title ?? id}`} lead={name?.detail}>
      <p className="detail">
        <Link to="/prices">All prices</Link>,{' '}
        <Link to="/printings/$id" params={{ id }}>
          the printing
        </Link>
      </p>
      <PriceOf id={id} height={380} />
      {all?.backTest ? <p className="lead">{sayBackTest(all.backTest)}</p> : null}
      {data ? (
        <div className="columns priced">
          <SaleTable prices={data} titles={titles} />
          <section>
            <h2>By service and grade</h2>
            <Grades prices={data} titles={titles} />
          </section>
        </div>
      ) : null}
    </Screen>
  );
}

interface GradesProps {
  readonly prices: PrintingPrices;
  readonly titles: ReadonlyMap<string, string>;
}

/** What it may fetch raw and at every service and grade, sold or not. */
function Grades({ prices: { prices, currency, on }, titles }: GradesProps) {
  return (
    <div className="wide">
      <table className="list brief price-grades">
        <thead>
          <tr>
            <th scope="col">As</th>
            <th scope="col">Sold</th>
            <th scope="col" className="figure">
              Next sale, {currency}
            </th>
            <th scope="col" className="figure">
              Eight of ten within
            </th>
          </tr>
        </thead>
        <tbody>
          {prices.map((price) => (
            <tr key={`${price.service} ${price.grade}`}>
              <th scope="row">{cellName(price, titles)}</th>
              <td className="detail">{price.sales > 0 ? `${price.sales} sold` : 'never sold'}</td>
              <td className="figure">
                <Num why={explainPrice(price, currency, on)}>{amount(price.price)}</Num>
              </td>
              <td className="figure">
                {amount(price.interval80[0])} to {amount(price.interval80[1])}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
