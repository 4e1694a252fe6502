import { Link } from '@tanstack/react-router';
import { useBook } from '../app/context.ts';
import { HeldWords, Marked } from '../marks/index.ts';
import { Answer } from './Answer.tsx';
import { ClaimList } from './ClaimList.tsx';
import { Modes } from './Modes.tsx';
import { Settle } from './Settle.tsx';
import { SlipNotes } from './SlipNotes.tsx';

interface Props {
  readonly id: string;
  readonly close: () => void;
  /** It came up over the lanes and can be put away. */
  readonly closable: boolean;
}

/** The sheet that answers "why?" for one printing. */
export function WhySheet({ id, close, closable }: Props) {
  const book = useBook();
  const name = book.names.get(id);
  const dated = book.dated.get(id);
  const keys = (event: React.KeyboardEvent) => {
    if (event.key === 'Escape' && !event.defaultPrevented) close();
  };
  return (
    <aside className="why-sheet" aria-labelledby="why-heading" onKeyDown={keys} key={id}>
      <div className="why-head">
        <h2 id="why-heading" tabIndex={-1}>
          {name?.title ?? id}
        </h2>
        {closable ? (
          <button type="button" className="plain" onClick={close}>
            Close
          </button>
        ) : null}
      </div>
      <p className="detail">
        {name?.detail ? `${name.detail}. ` : ''}
        <Link to="/printings/$id" params={{ id }}>
          Its page
        </Link>
      </p>
      <HeldWords held={book.held.get(id)} />
      <Answer dated={dated} />
      {dated?.why ? <Marked why={dated.why} /> : null}
      {dated ? <Modes dated={dated} /> : null}
      {dated ? <SlipNotes dated={dated} /> : null}
      <ClaimList printing={id} />
      <Settle printing={id} />
    </aside>
  );
}
