import { useState } from 'react';
import { useBook } from '../app/context.ts';
import { useDocuments } from '../wire/index.ts';

const KINDS: Readonly<Record<string, string>> = {
  account: 'Account',
  key: 'Key on a page',
  checklist: 'Checklist',
};

interface Props {
  readonly language: string;
  readonly prices: boolean;
}

/** The pages of account, key and checklist, as the PDF will have them. */
export function Documents({ language, prices }: Props) {
  const { version } = useBook().dossier;
  const { data, error, isPlaceholderData: old } = useDocuments(version, language, prices);
  const [kind, setKind] = useState('account');
  const pages = data?.files.filter((name) => name.startsWith(`${language}/${kind}-`)) ?? [];
  return (
    <figure className="document">
      <div className="preview-acts">
        <select aria-label="Document" value={kind} onChange={({ target }) => setKind(target.value)}>
          {Object.entries(KINDS).map(([one, words]) => (
            <option key={one} value={one}>
              {words}
            </option>
          ))}
        </select>
      </div>
      {error ? <p className="form-trouble">{error.message}</p> : null}
      {old || !(data || error) ? <p className="pending">The pages are being set …</p> : null}
      {data ? (
        <section className="document-pages" aria-label="Pages">
          {pages.map((name, i) => (
            <a key={name} href={data.root + name} target="_blank" rel="noreferrer">
              <img
                src={data.root + name}
                loading="lazy"
                alt={`${KINDS[kind]}, page ${i + 1} of ${pages.length}`}
              />
            </a>
          ))}
        </section>
      ) : null}
    </figure>
  );
}
