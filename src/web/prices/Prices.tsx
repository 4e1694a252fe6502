import { Link } from '@tanstack/react-router';
import type { PricesAnswer, WirePrice } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { type AxisLine, AxisWords, axisPath, Num, Screen } from '../marks/index.ts';
import { lanesOf, NO_FILTER, shortName } from '../view/index.ts';
import { usePrices } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { ticksBetween } from './picture.ts';
import { amount, cellName, explainPrice, sayBackTest } from './tell.ts';

/** What a copy of each printing may fetch, raw and at its top grades. */
export function PricesScreen() {
  const { version } = useBook().dossier;
  const { data, error, isPlaceholderData: old } = usePrices(version);
  const lead = data?.on
    ? `In ${data.currency} as of ${sayDay(dayFrom(data.on))}, up to 75 days on. The line is the range of eight of ten next sales, odd ones included. No promise: a market can turn.`
    : undefined;
  return (
    <Screen title="Prices" lead={lead}>
      {error ? <p className="slip-note">{error.message}</p> : null}
      {!data && !error ? <p className="pending">Prices are being fitted …</p> : null}
      {old ? <p className="pending">Being fitted anew …</p> : null}
      {data && data.on === null ? (
        <p className="empty">
          No sale, sighting, population or rate has a day yet: prices are learned from the rows of
          sales.csv.
        </p>
      ) : null}
      {data?.backTest ? <p className="lead">{sayBackTest(data.backTest)}</p> : null}
      {data && data.on !== null ? <Table prices={data} /> : null}
      {data ? <LeftOut prices={data} /> : null}
    </Screen>
  );
}

function Table({ prices }: { readonly prices: PricesAnswer }) {
  const book = useBook();
  const byId = new Map(prices.printings.map((one) => [one.id, one]));
  const titles = new Map(prices.services.map(({ id, title }) => [id, title]));
  const all = prices.printings.flatMap((one) => one.prices.flatMap(({ interval80 }) => interval80));
  const span: Span = [Math.log(Math.min(...all)) - 0.1, Math.log(Math.max(...all)) + 0.1];
  return (
    <div className="wide">
      <table className="list brief price-list">
        <thead>
          <tr>
            <th scope="col">Printing</th>
            <th scope="col">As</th>
            <th scope="col" className="price-axis">
              <AxisWords lines={linesIn(span)} />
            </th>
            <th scope="col" className="figure">
              Next sale, {prices.currency}
            </th>
            <th scope="col" className="figure">
              Eight of ten within
            </th>
            <th scope="col" className="figure">
              Sold
            </th>
          </tr>
        </thead>
        {lanesOf(book, NO_FILTER).map((id) => (
          <tbody key={id}>
            {shown(byId.get(id)?.prices ?? []).map((price, at) => (
              <Row
                key={`${price.service} ${price.grade}`}
                first={at === 0}
                {...{ id, price, prices, titles, span }}
              />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

type Span = readonly [number, number];

/** Where a logarithm stands, from 0 at the left end of a span to 1 at the right one. */
const shareOf = (log: number, [low, high]: Span) => (log - low) / (high - low);

function linesIn(span: Span): readonly AxisLine[] {
  return ticksBetween(...span).map((one) => ({
    at: shareOf(Math.log(one), span),
    words: one.toLocaleString('en'),
  }));
}

interface RowProps {
  readonly id: string;
  readonly price: WirePrice;
  /** The first row of its printing names it. */
  readonly first: boolean;
  readonly prices: PricesAnswer;
  readonly titles: ReadonlyMap<string, string>;
  readonly span: Span;
}

function Row({ id, price, first, prices, titles, span }: RowProps) {
  const name = shortName(useBook(), id);
  return (
    <tr>
      <th scope="row">
        {first ? (
          <Link to="/prices/$id" params={{ id }}>
            {name}
          </Link>
        ) : (
          <span className="unseen">{name}</span>
        )}
      </th>
      <td>{cellName(price, titles)}</td>
      <td className="rate-drawn">
        <Range price={price} span={span} />
      </td>
      <td className="figure">
        <Num why={explainPrice(price, prices.currency, prices.on ?? '')}>{amount(price.price)}</Num>
      </td>
      <td className="figure">
        {amount(price.interval80[0])} to {amount(price.interval80[1])}
      </td>
      <td className="figure sold">{price.sales}</td>
    </tr>
  );
}

/** Raw, and the three kinds that were sold most. */
function shown(prices: readonly WirePrice[]): readonly WirePrice[] {
  const graded = prices.filter(({ service, sales }) => service !== null && sales > 0);
  const most = new Set([...graded].sort((a, b) => b.sales - a.sales).slice(0, 3));
  return prices.filter((price) => price.service === null || most.has(price));
}

function Range({ price: { price, interval80 }, span }: { price: WirePrice; span: Span }) {
  const x = (value: number) => 2 + 296 * shareOf(Math.log(value), span);
  const [low, high] = interval80.map(x) as [number, number];
  return (
    <svg
      className="rate shrunk"
      viewBox="0 0 300 12"
      preserveAspectRatio="none"
      width="100%"
      height="12"
      aria-hidden="true"
    >
      <path className="rules" d={axisPath(linesIn(span))} vectorEffect="non-scaling-stroke" />
      <path
        className="span"
        d={`M${low} 2v8M${low} 6H${high}M${high} 2v8`}
        vectorEffect="non-scaling-stroke"
      />
      <path className="best" d={`M${x(price)} 0v12`} vectorEffect="non-scaling-stroke" />
    </svg>
  );
}

function LeftOut({ prices: { leftOut, assumed } }: { readonly prices: PricesAnswer }) {
  if (leftOut.length === 0 && assumed.length === 0) return null;
  return (
    <section>
      <h2>Left out</h2>
      <ul className="rows">
        {leftOut.map(({ why, rows }) => (
          <li key={why}>
            <span>
              {count(rows.length, 'row')} of sales.csv, since {why}:{' '}
              <span className="detail">
                {rows.length === 1 ? 'row' : 'rows'} {rows.slice(0, 12).join(', ')}
                {rows.length > 12 ? ' …' : ''}
              </span>
            </span>
          </li>
        ))}
        {assumed.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </section>
  );
}
