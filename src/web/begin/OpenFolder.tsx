import { type FormEvent, useState } from 'react';
import type { OpenRequest } from '../../contract/index.ts';
import { Field } from '../claims/Field.tsx';
import { useDossiers } from '../wire/index.ts';
import { useOpening } from './opened.ts';

/** A dossier that is there already: by its path, or one opened lately. */
export function OpenFolder() {
  const [folder, setFolder] = useState('');
  const known = useDossiers();
  const opening = useOpening<OpenRequest>('/api/open');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (folder.trim() !== '') opening.mutate({ folder: folder.trim() });
  };
  const lately = known.data?.dossiers ?? [];
  return (
    <section>
      <h2>Or open a folder</h2>
      <form className="open-folder" onSubmit={submit}>
        <Field label="Its full path; it must hold printings.csv">
          {(ties) => (
            <input {...ties} value={folder} onChange={(event) => setFolder(event.target.value)} />
          )}
        </Field>
        <button type="submit" className="choice" disabled={opening.isPending}>
          Open
        </button>
      </form>
      {opening.error ? (
        <p className="trouble" role="alert">
          {opening.error.message}
        </p>
      ) : null}
      {lately.length > 0 ? (
        <ul className="rows">
          {lately.map(({ folder: path, title, current }) => (
            <li key={path}>
              <span>
                {title} <span className="detail">{path}</span>
              </span>
              {current ? (
                <span className="detail">open now</span>
              ) : (
                <button
                  type="button"
                  className="plain"
                  onClick={() => opening.mutate({ folder: path })}
                >
                  Open<span className="unseen"> {title}</span>
                </button>
              )}
            </li>
          ))}
        </ul>
      ) : null}
    </section>
  );
}
