import { useRef } from 'react';
import type { PrintingPrices, WirePrice } from '../../contract/index.ts';
import { useWidth } from '../app/media.ts';
import { fits, yearTicks } from '../draw/index.ts';
import { type PricePicture, pictureOf } from './picture.ts';
import { SaleMarks } from './SaleMarks.tsx';
import { amount, cellName, explainSale } from './tell.ts';

interface Props {
  readonly prices: PrintingPrices;
  readonly chosen: WirePrice;
  readonly titles: ReadonlyMap<string, string>;
  readonly height?: number;
}

const LEFT = 52;
const RIGHT = 12;

/** Every sale of a printing on the logarithm of its price, with the median and the range of one kind. */
export function PriceFigure({ prices, chosen, titles, height = 320 }: Props) {
  const holder = useRef<HTMLElement>(null);
  const width = useWidth(holder, 640) - LEFT - RIGHT;
  const picture = pictureOf(prices, chosen, width, height);
  const { currency } = prices;
  return (
    <figure className="distribution price-figure" ref={holder}>
      <svg className="axis" width={width + LEFT + RIGHT} height={height + 48}>
        <title>{`Sales over time, ${cellName(chosen, titles)} drawn through; arrow keys lead from sale to sale`}</title>
        <g transform={`translate(${LEFT} 18)`}>
          <Ground picture={picture} height={height} currency={currency} />
          <path className="price-band" d={picture.band} />
          <path className="price-median" d={picture.median} />
          <SaleMarks
            marks={picture.marks}
            services={[...titles.keys()]}
            said={(sale) => explainSale(sale, titles, currency)}
          />
          <Next picture={picture} />
        </g>
      </svg>
    </figure>
  );
}

interface GroundProps {
  readonly picture: PricePicture;
  readonly height: number;
  readonly currency: string;
}

function Ground({ picture: { scale, ticks }, height, currency }: GroundProps) {
  return (
    <>
      {ticks.map(({ y, amount: at }) => (
        <g key={at}>
          <path className="minor" d={`M0 ${y.toFixed(1)}H${scale.width}`} />
          <text className="small" x={-8} y={y + 4} textAnchor="end">
            {amount(at)}
          </text>
        </g>
      ))}
      <text className="small" x={-8} y={-8} textAnchor="end">
        {currency}
      </text>
      <path className="base" d={`M0 ${height}.5H${scale.width}`} />
      {yearTicks(scale, 64)
        .filter((tick) => tick.major && fits(tick, scale))
        .map((tick) => (
          <g key={tick.label}>
            <path className="major" d={`M${tick.x.toFixed(1)} ${height}v6`} />
            <text className="small" x={tick.x} y={height + 19} textAnchor="middle">
              {tick.label}
            </text>
          </g>
        ))}
    </>
  );
}

/** Where the next sale should fall, as a dimension line at the right. */
function Next({ picture: { next } }: { readonly picture: PricePicture }) {
  const { x, low, mid, high } = next;
  return (
    <g className="price-next">
      <path d={`M${x - 6} ${low}h12m-6 0V${high}m-6 0h12`} />
      <path className="mid" d={`M${x - 9} ${mid}h18`} />
    </g>
  );
}
