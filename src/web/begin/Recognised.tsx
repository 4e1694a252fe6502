import { type FormEvent, useState } from 'react';
import type { BeginRequest } from '../../contract/index.ts';
import { Field } from '../claims/Field.tsx';
import { count } from '../words/index.ts';
import { type Draft, sourcesIn } from './draft.ts';
import { NoteLine } from './NoteLine.tsx';
import { useOpening } from './opened.ts';
import { PrintingTable } from './PrintingTable.tsx';
import { toChanges } from './toChanges.ts';

interface Props {
  readonly draft: Draft;
  readonly set: (draft: Draft) => void;
  readonly back: () => void;
}

/** The notes with what was made of each line, to correct, name and make a dossier of. */
export function Recognised({ draft, set, back }: Props) {
  const [title, setTitle] = useState('');
  const opening = useOpening<BeginRequest>('/api/begin');
  const claims = draft.lines.flatMap((line) => line.claims.filter(({ keep }) => keep));
  const open = claims.filter(({ choices, value }) => choices.length > 0 && value.startsWith('['));
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (title.trim() === '') return;
    opening.mutate({ title: title.trim(), language: 'en', changes: [...toChanges(draft)] });
  };
  return (
    <>
      <p className="summary" aria-live="polite">
        {count(draft.printings.length, 'printing')}, {count(claims.length, 'claim')},{' '}
        {count(sourcesIn(draft).length, 'source')}.
        {open.length > 0
          ? ` ${count(open.length, 'day')} can be read two ways: choose, or leave open.`
          : ''}
      </p>
      <ol className="note-lines">
        {draft.lines.map((line) => (
          <NoteLine key={line.line} line={line} draft={draft} set={set} />
        ))}
      </ol>
      <PrintingTable draft={draft} set={set} />
      <form className="name-card" onSubmit={submit}>
        <Field label="Name of the card">
          {(ties) => (
            <input
              {...ties}
              value={title}
              onChange={(event) => setTitle(event.target.value)}
              required
            />
          )}
        </Field>
        {opening.error ? (
          <p className="trouble" role="alert">
            {opening.error.message}
          </p>
        ) : null}
        <div className="acts">
          <button
            type="submit"
            className="choice chosen"
            disabled={opening.isPending || draft.printings.length === 0}
          >
            Make the dossier
          </button>
          <button type="button" className="choice" onClick={back}>
            Back to the notes
          </button>
        </div>
      </form>
    </>
  );
}
