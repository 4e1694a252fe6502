import { Link, useParams } from '@tanstack/react-router';
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
        <div className="columns">
          <SaleTable prices={data} titles={titles} />
          <section>
            <h2>By service and grade</h2>
            <ul className="rows">
              {data.prices.map((price) => (
                <li key={`${price.service} ${price.grade}`}>
                  <span>
                    {cellName(price, titles)}{' '}
                    <span className="detail">
                      {price.sales > 0 ? `${price.sales} sold` : 'never sold'}
                    </span>
                  </span>
                  <span>
                    <Num why={explainPrice(price, data.currency, data.on)}>
                      {amount(price.price)}
                    </Num>{' '}
                    <span className="detail">
                      {amount(price.interval80[0])} to {amount(price.interval80[1])}
                    </span>
                  </span>
                </li>
              ))}
            </ul>
          </section>
        </div>
      ) : null}
    </Screen>
  );
}
