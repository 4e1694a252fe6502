import type { HeldRow } from '../../contract/index.ts';
import { capital, sayHeld } from '../words/index.ts';

interface Props {
  readonly copies: number;
  /** Copies of one of several printings, this one among them. */
  readonly perhaps: number;
}

/** The register mark of a printing of which the collector holds a copy; broken where not sure. */
export function HeldMark({ copies, perhaps }: Props) {
  const words = sayHeld({ copies, perhaps });
  return (
    <span className="held" role="img" aria-label={words} data-why={capital(`${words}.`)}>
      <Mark sure={copies > 0} />
    </span>
  );
}

/** The same mark with its words beside it; nothing where no copy is held. */
export function HeldWords({ held }: { readonly held: HeldRow | undefined }) {
  if (!held) return null;
  return (
    <p className="detail held-words">
      <Mark sure={held.copies > 0} /> {capital(`${sayHeld(held)}.`)}
    </p>
  );
}

/** The mark alone, as the legend shows it. */
export function Mark({ sure }: { readonly sure: boolean }) {
  return (
    <svg
      className={sure ? 'register-mark' : 'register-mark perhaps'}
      viewBox="0 0 14 14"
      width="14"
      height="14"
      aria-hidden="true"
    >
      <circle cx="7" cy="7" r="4" />
      <path d="M7 0v14M0 7h14" />
    </svg>
  );
}
