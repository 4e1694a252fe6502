import { sayP } from '../words/index.ts';
import { Num } from './Num.tsx';

interface Props {
  readonly p: number;
  readonly interval: readonly [number, number];
  readonly why: string;
}

/** A share with its 95 % interval on a line from 0 to 1, like a dimension on a drawing. */
export function Interval({ p, interval: [low, high], why }: Props) {
  const x = (value: number) => 1 + value * 94;
  return (
    <span className="chance">
      <svg className="interval" viewBox="0 0 96 12" width="96" height="12" aria-hidden="true">
        <path className="ground" d="M1 6H95" />
        <path className="span" d={`M${x(low)} 2v8M${x(low)} 6H${x(high)}M${x(high)} 2v8`} />
        <rect className="best" x={x(p) - 1.5} y="1" width="3" height="10" />
      </svg>
      <Num why={why}>{sayP(p)}</Num>
    </span>
  );
}
