import { type ReactNode, useId } from 'react';

interface Props {
  readonly label: string;
  /** What the field's content means, read aloud as it changes. */
  readonly hint?: string;
  readonly children: ReactNode;
}

/** A labelled field with what its content means beneath it. */
export function Field({ label, hint, children }: Props) {
  const id = useId();
  return (
    // biome-ignore lint/a11y/noLabelWithoutControl: the control is the child
    <label className="field">
      <span>{label}</span>
      {children}
      {hint === undefined ? null : (
        <span className="hint" id={id} aria-live="polite">
          {hint}
        </span>
      )}
    </label>
  );
}
