import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import { useDesk } from '../app/context.ts';
import { Field } from '../claims/Field.tsx';
import { shortName } from '../view/index.ts';
import { useNewCopy } from '../wire/index.ts';
import { type CopyDraft, freeId, stepFor, wrongWith } from './newCopy.ts';
import { type Dropped, PictureDrop, wrongPictures } from './PictureDrop.tsx';

const STATES = ['offered', 'bought', 'arrived'] as const;

/** A copy begun with its pictures and the seller's words: its row, its pictures, then the bench. */
export function NewCopy({ taken }: { readonly taken: readonly string[] }) {
  const { say } = useDesk();
  const navigate = useNavigate();
  const [pictures, setPictures] = useState<readonly Dropped[]>([]);
  const [draft, setDraft] = useState<CopyDraft>(() => ({
    ...{ id: freeId(taken), printing: '', status: 'arrived', listing: '', days: '', from: today() },
  }));
  const { begin, stage, trouble, busy } = useNewCopy();
  const wanted = pictures.filter(({ role }) => role !== '');
  const wrong = wrongWith(draft, taken) || wrongPictures(pictures);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    if (!(await begin(stepFor(draft), draft.id, wanted))) return;
    say(
      `${draft.id} lies on the bench. Undo takes its row back; its pictures stay in their folder.`,
    );
    await navigate({ to: '/bench/$id', params: { id: draft.id } });
  };
  return (
    <form className="new-copy" onSubmit={submit}>
      <h2>Lay a copy on the bench</h2>
      <PictureDrop pictures={pictures} change={setPictures} />
      <Words draft={draft} set={(change) => setDraft({ ...draft, ...change })} />
      {wrong || trouble ? (
        <p className="trouble" role="alert">
          {wrong || trouble}
        </p>
      ) : null}
      <div className="acts">
        <button
          type="submit"
          className="choice chosen"
          disabled={busy || wrong !== '' || wanted.length === 0}
        >
          Examine it
        </button>
        <span className="detail" aria-live="polite">
          {stage}
        </span>
      </div>
      <p className="detail">
        All of it stays on this machine: the pictures as they are in desk/photos/{draft.id}/, the
        words in desk/copies.csv.
      </p>
    </form>
  );
}

interface WordsProps {
  readonly draft: CopyDraft;
  readonly set: (change: Partial<CopyDraft>) => void;
}

function Words({ draft, set }: WordsProps) {
  const { book } = useDesk();
  return (
    <>
      <Field label="The seller’s own words" hint="Title and text of the listing, as they stand.">
        {(ties) => (
          <textarea
            {...ties}
            rows={4}
            maxLength={50_000}
            value={draft.listing}
            onChange={(event) => set({ listing: event.target.value })}
          />
        )}
      </Field>
      <div className="add-row">
        <Field label="Printing">
          {(ties) => (
            <select
              {...ties}
              value={draft.printing}
              onChange={(event) => set({ printing: event.target.value })}
            >
              <option value="">not known yet</option>
              {book.dossier.printings.map(({ id }) => (
                <option key={id} value={id}>
                  {shortName(book, id)}
                </option>
              ))}
            </select>
          )}
        </Field>
        <Field label="Status">
          {(ties) => (
            <select
              {...ties}
              value={draft.status}
              onChange={(event) => set({ status: event.target.value })}
            >
              {STATES.map((state) => (
                <option key={state}>{state}</option>
              ))}
            </select>
          )}
        </Field>
        <Field label="Its id" hint="Its folder is named by it.">
          {(ties) => (
            <input
              {...ties}
              value={draft.id}
              onChange={(event) => set({ id: event.target.value })}
            />
          )}
        </Field>
        <Window draft={draft} set={set} />
      </div>
    </>
  );
}

/** The time in which it can go back. */
function Window({ draft, set }: WordsProps) {
  return (
    <>
      <Field label="Days to send it back" hint="As the seller says; empty where you do not know.">
        {(ties) => (
          <input
            {...ties}
            inputMode="numeric"
            value={draft.days}
            onChange={(event) => set({ days: event.target.value })}
          />
        )}
      </Field>
      <Field label="Counted from">
        {(ties) => (
          <input
            {...ties}
            type="date"
            value={draft.from}
            onChange={(event) => set({ from: event.target.value })}
          />
        )}
      </Field>
    </>
  );
}

/** This day by the collector's own calendar. */
function today(): string {
  const day = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
