import { Link } from '@tanstack/react-router';
import { type FormEvent, useState } from 'react';
import type { WireLack } from '../../contract/index.ts';
import { useBook, useDesk } from '../app/context.ts';
import { ASKS, addressOf, filled, HOW, nameOf, placeOf } from './tell.ts';

/** What the account lacks, kind by kind, each entry with where it is mended. */
export function Missing({ missing }: { readonly missing: readonly WireLack[] }) {
  return (
    <section className="missing">
      <h2>What is missing</h2>
      {missing.length === 0 ? <p className="detail">Nothing that can be told from here.</p> : null}
      {missing.map((lack) => (
        <details key={lack.lack} className="outcomes">
          <summary>
            <span>{lack.head}</span>
            <span className="detail">{lack.entries.length}</span>
          </summary>
          <p className="detail">
            {lack.why} {HOW[lack.lack] ?? ''}
          </p>
          <ul className="lacks">
            {lack.entries.map((entry) => (
              <Entry
                key={`${entry.of} ${entry.file} ${entry.row} ${entry.column}`}
                lack={lack.lack}
                entry={entry}
              />
            ))}
          </ul>
        </details>
      ))}
    </section>
  );
}

interface EntryProps {
  readonly lack: string;
  readonly entry: WireLack['entries'][number];
}

function Entry({ lack, entry }: EntryProps) {
  const book = useBook();
  const name = nameOf(lack, entry.of, book);
  const address = addressOf(lack, entry.of, book);
  return (
    <li>
      <p>
        {address === null ? name : <Link to={address}>{name}</Link>}
        <span className="detail one-line">
          {entry.found} <span className="place">· {placeOf(entry)}</span>
        </span>
      </p>
      {entry.cells && entry.column ? <Fill entry={entry} column={entry.column} of={name} /> : null}
    </li>
  );
}

interface FillProps {
  readonly entry: EntryProps['entry'];
  readonly column: string;
  readonly of: string;
}

/** The empty cell; once it is filled, the entry leaves the list. */
function Fill({ entry, column, of }: FillProps) {
  const { change } = useDesk();
  const [words, setWords] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const step = filled(entry, words);
    if (step && words.trim() !== '') change(step);
  };
  const asks = ASKS[column] ?? column;
  return (
    <form className="fill" onSubmit={submit}>
      <input
        aria-label={`${asks}: ${of}, ${entry.found}`}
        placeholder={asks}
        value={words}
        onChange={({ target }) => setWords(target.value)}
      />
      <button type="submit" className="choice" disabled={words.trim() === ''}>
        Fill in
      </button>
    </form>
  );
}
