import { type FormEvent, useState } from 'react';
import type { FilmRequest } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { Field, type Ties } from '../claims/Field.tsx';
import type { WritingProps } from './PublishForm.tsx';
import { LANGUAGES } from './tell.ts';

const RATE = 160;

interface Draft {
  readonly out: string;
  readonly order: 'oldest' | 'newest' | 'own';
  /** Ids, one a line. */
  readonly list: string;
  readonly language: FilmRequest['language'];
  readonly rate: string;
  readonly recording: string;
}

/** Where the kit of a film is written, and how the film is told. */
export function FilmForm({ place, prices, busy, order }: WritingProps) {
  const { printings } = useBook().dossier;
  const [draft, setDraft] = useState<Draft>({
    ...{ out: place, order: 'oldest', language: 'en', rate: String(RATE), recording: '' },
    list: printings.map(({ id }) => id).join('\n'),
  });
  const set = (part: Partial<Draft>) => setDraft({ ...draft, ...part });
  const text = (ties: Ties, key: 'out' | 'rate' | 'recording') => (
    <input {...ties} value={draft[key]} onChange={({ target }) => set({ [key]: target.value })} />
  );
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!busy) order({ do: 'film', request: requestOf(draft, prices) });
  };
  return (
    <form onSubmit={submit} aria-label="Film">
      <Field label="Folder of the kit">{(ties) => text(ties, 'out')}</Field>
      <div className="film-fields">
        <Field label="Told">
          {(ties) => (
            <select
              {...ties}
              value={draft.order}
              onChange={({ target }) => set({ order: target.value as Draft['order'] })}
            >
              <option value="oldest">oldest first</option>
              <option value="newest">newest first</option>
              <option value="own">in my own order</option>
            </select>
          )}
        </Field>
        <Tongue value={draft.language} choose={(language) => set({ language })} />
        <Field label="Words a minute">{(ties) => text(ties, 'rate')}</Field>
        <Field label="Recording, if there is one">{(ties) => text(ties, 'recording')}</Field>
      </div>
      {draft.order === 'own' ? (
        <Field label="Printings in the order of telling, one id a line">
          {(ties) => (
            <textarea
              {...ties}
              rows={8}
              value={draft.list}
              onChange={({ target }) => set({ list: target.value })}
            />
          )}
        </Field>
      ) : null}
      <div className="acts">
        <button type="submit" className="choice chosen" aria-disabled={busy}>
          Make the film’s kit
        </button>
      </div>
    </form>
  );
}

interface TongueProps {
  readonly value: FilmRequest['language'];
  readonly choose: (language: FilmRequest['language']) => void;
}

function Tongue({ value, choose }: TongueProps) {
  return (
    <Field label="Language">
      {(ties) => (
        <select
          {...ties}
          value={value}
          onChange={({ target }) => choose(target.value as FilmRequest['language'])}
        >
          {Object.entries(LANGUAGES).map(([tag, name]) => (
            <option key={tag} value={tag} lang={tag}>
              {name}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

function requestOf({ order, list, rate, ...draft }: Draft, prices: boolean): FilmRequest {
  const ids = list.split('\n').map((line) => line.trim());
  const told = order === 'own' ? ids.filter(Boolean) : order;
  return { ...draft, prices, order: told, rate: Number(rate) };
}
