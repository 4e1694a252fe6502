import type { ReactNode } from 'react';
import { shapeOf } from './SaleMarkDrawn.tsx';

/** What the marks and lines of a picture of prices mean. */
export function PriceLegend({ titles }: { readonly titles: ReadonlyMap<string, string> }) {
  const services = [...titles.values()];
  return (
    <div className="legend">
      <Entry words="sold raw">
        <path className="shape" d={shapeOf(-1)} />
      </Entry>
      {services.map((title, at) => (
        <Entry key={title} words={title}>
          <path className="shape" d={shapeOf(at)} />
        </Entry>
      ))}
      <Entry words="asked only" kind="asking">
        <path className="shape" d={shapeOf(-1)} />
      </Entry>
      <Entry words="not paid" kind="unpaid">
        <path className="shape" d={shapeOf(-1)} />
        <path className="stroke" d="M-5 5L5 -5" />
      </Entry>
      <Entry words="odd, counted for little" kind="odd">
        <path className="shape" d={shapeOf(-1)} />
        <circle className="ring" r="7.5" />
      </Entry>
      <div>
        <svg width="30" height="16" viewBox="0 0 30 16" aria-hidden="true">
          <path className="price-band" d="M0 2H30V14H0z" />
          <path className="price-median" d="M0 8H30" />
        </svg>
        median of the next sale and its 80 %, carried back by the market’s course
      </div>
    </div>
  );
}

interface EntryProps {
  readonly words: string;
  readonly kind?: string;
  readonly children: ReactNode;
}

function Entry({ words, kind = 'sold', children }: EntryProps) {
  return (
    <div>
      <svg width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
        <g className={`sale own ${kind}`}>{children}</g>
      </svg>
      {words}
    </div>
  );
}
