import { useState } from 'react';
import type { PrintingPrices, WirePrice } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Num } from '../marks/index.ts';
import { usePrices, usePrintingPrices } from '../wire/index.ts';
import { count } from '../words/index.ts';
import { PriceFigure } from './PriceFigure.tsx';
import { PriceLegend } from './PriceLegend.tsx';
import { amount, cellName, explainPrice } from './tell.ts';

interface Props {
  readonly id: string;
  readonly height?: number;
}

/** The picture of one printing's prices, with a choice of what the line is drawn for. */
export function PriceOf({ id, height = 320 }: Props) {
  const { version } = useBook().dossier;
  const { data: all } = usePrices(version);
  const { data, error } = usePrintingPrices(version, id);
  const [key, setKey] = useState<string>();
  if (error) return <p className="detail">No price: no sale, sighting or rate names a day.</p>;
  if (!data || !all) return <p className="pending">Prices are being fitted …</p>;
  const titles = new Map(all.services.map(({ id: service, title }) => [service, title]));
  const cells = offered(data);
  const chosen = cells.find((cell) => keyOf(cell) === key) ?? cells[0];
  if (!chosen) return null;
  const { price, interval80, sales } = chosen;
  return (
    <div className="price-of">
      <label className="field price-choice">
        <span>Drawn through</span>
        <select value={keyOf(chosen)} onChange={(event) => setKey(event.target.value)}>
          {cells.map((cell) => (
            <option key={keyOf(cell)} value={keyOf(cell)}>
              {cellName(cell, titles)}
              {cell.sales > 0 ? `, ${count(cell.sales, 'sale')}` : ', never sold'}
            </option>
          ))}
        </select>
      </label>
      <p className="price-said">
        <Num why={explainPrice(chosen, data.currency, data.on)}>
          {amount(price)} {data.currency}
        </Num>{' '}
        <span className="detail">
          {cellName(chosen, titles)} as of {sayDay(dayFrom(data.on))}; eight of ten next sales
          within {amount(interval80[0])} to {amount(interval80[1])}
          {sales === 0 ? '. Never sold so far: the range is wide, since others speak for it' : ''}.
        </span>
      </p>
      <PriceFigure prices={data} {...{ chosen, titles, height }} />
      <PriceLegend titles={titles} />
    </div>
  );
}

function keyOf({ service, grade }: WirePrice): string {
  return `${service ?? ''} ${grade ?? ''}`;
}

/** What the line may be drawn for: raw and what was sold first, then the rest. */
function offered({ prices }: PrintingPrices): readonly WirePrice[] {
  return [...prices].sort((a, b) => b.sales - a.sales);
}
