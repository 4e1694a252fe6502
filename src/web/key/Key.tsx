import type { CSSProperties } from 'react';
import { keyFit, keyNotes, leadsTo, sayTrait } from '../../catalogue/index.ts';
import type { KeyAnswer } from '../../contract/index.ts';
import { dayFrom, sayDay } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { candidateName } from '../identify/Candidates.tsx';
import { Screen } from '../marks/index.ts';
import { useKey } from '../wire/index.ts';

/** The key to all printings, to be read on the screen or printed on one sheet. */
export function Key() {
  const book = useBook();
  const { data, error } = useKey(book.dossier.version);
  const title = `Key to ${book.dossier.title || 'the printings'}`;
  return (
    <Screen
      title={title}
      lead={
        data?.on
          ? `Shortest on average, by how many of each are about as of ${sayDay(dayFrom(data.on))}.`
          : ''
      }
    >
      {error ? (
        <p className="trouble" role="alert">
          {error.message}
        </p>
      ) : null}
      <div className="acts">
        <button type="button" className="choice" onClick={() => window.print()}>
          Print it on one sheet
        </button>
      </div>
      {data ? <Couplets answer={data} title={title} /> : null}
    </Screen>
  );
}

interface Props {
  readonly answer: KeyAnswer;
  readonly title: string;
}

function Couplets({ answer, title }: Props) {
  const book = useBook();
  const { key } = answer;
  const around = {
    ...{ title, day: answer.on },
    called: (id: string) => candidateName(book, answer, id),
  };
  const [size, columns] = keyFit(key, around);
  const style = { '--key-size': `${size}pt`, '--key-columns': columns } as CSSProperties;
  return (
    <div className="key" style={style}>
      <ol className="couplets">
        {key.couplets.map(({ number, from, trait, sees, leads }) => (
          <li key={number} id={`couplet-${number}`} tabIndex={-1}>
            <h2>
              {number}
              {from === null ? null : <Jump to={from} words={`(${from})`} />} {sayTrait(trait)},{' '}
              <em>{sees}</em>
            </h2>
            <ul>
              {leads.map((lead) => (
                <li key={lead.says}>
                  <span>{lead.says}</span>
                  <i aria-hidden="true" />
                  {lead.to === null ? (
                    <b>{leadsTo(lead, around.called)}</b>
                  ) : (
                    <Jump to={lead.to} words={String(lead.to)} />
                  )}
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
      <footer>
        {keyNotes(key, around).map((note) => (
          <p key={note} className="detail">
            {note}
          </p>
        ))}
      </footer>
    </div>
  );
}

/** Leads to another couplet; the address of the screen stays. */
function Jump({ to, words }: { readonly to: number; readonly words: string }) {
  return (
    <button
      type="button"
      className="plain jump"
      aria-label={`to couplet ${to}`}
      onClick={() => {
        const couplet = document.getElementById(`couplet-${to}`);
        couplet?.scrollIntoView({ block: 'center' });
        couplet?.focus({ preventScroll: true });
      }}
    >
      {words}
    </button>
  );
}
