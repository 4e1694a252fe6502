import { type FormEvent, useState } from 'react';
import { Field } from '../claims/Field.tsx';
import type { Order } from '../wire/index.ts';

/** What the forms of both publications are given. */
export interface WritingProps {
  /** The folder that is offered. */
  readonly place: string;
  readonly prices: boolean;
  /** Something is being written. */
  readonly busy: boolean;
  readonly order: (order: Order) => void;
}

/** Where the site is written, and whether it is a revision or a proof. */
export function PublishForm({ place, prices, busy, order }: WritingProps) {
  const [out, setOut] = useState(place);
  const [proof, setProof] = useState(false);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!busy) order({ do: 'publish', request: { out, prices, proof } });
  };
  return (
    <form onSubmit={submit} aria-label="Publish">
      <Field label="Folder of the site">
        {(ties) => <input {...ties} value={out} onChange={({ target }) => setOut(target.value)} />}
      </Field>
      <label className="check-field">
        <input
          type="checkbox"
          checked={proof}
          onChange={({ target }) => setProof(target.checked)}
        />
        <span>A proof: freeze no revision</span>
      </label>
      <div className="acts">
        <button type="submit" className="choice chosen" aria-disabled={busy}>
          Publish
        </button>
      </div>
    </form>
  );
}
