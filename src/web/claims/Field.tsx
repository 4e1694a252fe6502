import { type ReactNode, useId } from 'react';

/** What ties a control to its label and hint. */
export interface Ties {
  readonly id: string;
  readonly 'aria-describedby'?: string;
}

interface Props {
  readonly label: string;
  /** What the field's content means, read aloud as it changes. */
  readonly hint?: string;
  /** The hint says that something is wrong. */
  readonly wrong?: boolean;
  readonly children: (ties: Ties) => ReactNode;
}

/** A labelled field with what its content means beneath it. */
export function Field({ label, hint, wrong = false, children }: Props) {
  const id = useId();
  const ties = hint === undefined ? { id } : { id, 'aria-describedby': `${id}hint` };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children(ties)}
      {hint === undefined ? null : (
        <span className={wrong ? 'hint wrong' : 'hint'} id={`${id}hint`} aria-live="polite">
          {hint}
        </span>
      )}
    </div>
  );
}
