import type { KeyboardEvent } from 'react';
import type { Placed } from './picture.ts';

interface Props {
  readonly mark: Placed;
  /** Position of its service; -1 where it was sold raw. */
  readonly shape: number;
  readonly words: string;
  /** It is where the Tab key stops. */
  readonly stop: boolean;
  readonly reach: () => void;
  readonly keys: (event: KeyboardEvent<SVGGElement>) => void;
}

/** Above this a sale is ringed as odd. */
const ODD = 0.5;

/** A sale: round where raw, another shape a service; hollow where asked only, crossed where not paid. */
export function SaleMarkDrawn({
  mark: { x, y, sale, own },
  shape,
  words,
  stop,
  reach,
  keys,
}: Props) {
  const { kind, odd } = sale;
  const isOdd = odd !== null && odd > ODD;
  const classes = ['sale', own ? 'own' : '', kind, isOdd ? 'odd' : ''].filter(Boolean).join(' ');
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: it says what it is when it is reached, and does nothing
    <g
      className={classes}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
      role="img"
      aria-label={words}
      data-why={words}
      tabIndex={stop ? 0 : -1}
      onFocus={reach}
      onKeyDown={keys}
    >
      <circle className="reach" r="9" />
      <path className="shape" d={shapeOf(shape)} />
      {kind === 'unpaid' ? <path className="stroke" d="M-5 5L5 -5" /> : null}
      {isOdd ? <circle className="ring" r="7.5" /> : null}
    </g>
  );
}

/** The outline of a mark: a disc where raw, then a square, a triangle, a diamond. */
export function shapeOf(service: number): string {
  if (service < 0) return 'M-3.6 0a3.6 3.6 0 1 0 7.2 0a3.6 3.6 0 1 0 -7.2 0z';
  return [
    'M-3.3 -3.3h6.6v6.6h-6.6z',
    'M0 -4.2l4.2 7.4h-8.4z',
    'M0 -4.8l4.8 4.8l-4.8 4.8l-4.8 -4.8z',
  ][service % 3] as string;
}
