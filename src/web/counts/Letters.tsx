import { useState } from 'react';
import type { CountingService } from '../../contract/index.ts';
import { useBook, useDesk } from '../app/context.ts';
import { useLetter } from '../wire/index.ts';

/** The letters that ask services to mend lumped, missing and mislabelled printings. */
export function Letters({ services }: { readonly services: readonly CountingService[] }) {
  const [open, setOpen] = useState<string>();
  if (services.length === 0) return null;
  return (
    <section>
      <h2>A letter to the service</h2>
      <p className="lead">
        Asks it to mend labels that hold several printings, printings that it has graded and does
        not list, and copies under another’s label, each with its evidence. Read it over before you
        send it.
      </p>
      <div className="acts">
        {services.map(({ id, title }) => (
          <button
            key={id}
            type="button"
            className="choice"
            aria-pressed={open === id}
            onClick={() => setOpen(open === id ? undefined : id)}
          >
            {title}
          </button>
        ))}
      </div>
      {open ? <Letter key={open} service={open} /> : null}
    </section>
  );
}

function Letter({ service }: { readonly service: string }) {
  const { say } = useDesk();
  const { version } = useBook().dossier;
  const { data, error } = useLetter(version, service);
  if (error) return <p className="slip-note">{error.message}</p>;
  if (!data) return <p className="pending">The letter is being written …</p>;
  const { letter } = data;
  if (letter === null)
    return <p className="empty">Nothing was found that this service would be asked to mend.</p>;
  const copy = () => {
    navigator.clipboard.writeText(letter).then(
      () => say('The letter was copied.'),
      () => say('The letter could not be copied: mark it and copy it by hand.'),
    );
  };
  return (
    <article className="letter">
      {letter
        .trim()
        .split('\n\n')
        .map((part) => (
          <p key={part}>{part}</p>
        ))}
      <div className="acts">
        <button type="button" className="choice" onClick={copy}>
          Copy it
        </button>
      </div>
    </article>
  );
}
