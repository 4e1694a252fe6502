import { sayP } from '../words/index.ts';
import { Num } from './Num.tsx';

interface Props {
  readonly p: number;
  readonly why: string;
  /** Drawn in magenta: the evidence speaks against it. */
  readonly against?: boolean;
}

/** A probability as a short bar with its number; the number says what the bar shows. */
export function Chance({ p, why, against = false }: Props) {
  return (
    <span className="chance">
      <svg className="chance-bar" viewBox="0 0 48 9" width="48" height="9" aria-hidden="true">
        <rect className="ground" width="48" height="9" />
        <rect className={against ? 'against' : 'for'} width={Math.max(1, p * 48)} height="9" />
      </svg>
      <Num why={why}>{sayP(p)}</Num>
    </span>
  );
}
