import { useState } from 'react';
import type { PreviewAnswer } from '../../contract/index.ts';
import { useBook } from '../app/context.ts';
import { shortName } from '../view/index.ts';
import { usePreview } from '../wire/index.ts';
import { Documents } from './Documents.tsx';
import { Stills } from './Stills.tsx';
import { LANGUAGES, pageTitle } from './tell.ts';

const AS = ['Site', 'Document', 'Still'] as const;

/** How the account will look: its site, documents and stills, before anything is written. */
export function Preview({ prices }: { readonly prices: boolean }) {
  const { version } = useBook().dossier;
  const { data, error, isPlaceholderData: old } = usePreview(version, prices);
  const [as, setAs] = useState<(typeof AS)[number]>('Site');
  const [path, setPath] = useState('index.html');
  const [language, setLanguage] = useState<keyof typeof LANGUAGES>('en');
  const printing = data?.pages.find((page) => page.path === path)?.printing ?? null;
  return (
    <section className="preview">
      <h2>How it looks</h2>
      <div className="preview-acts">
        <fieldset className="preview-as">
          <legend className="unseen">Shown as</legend>
          {AS.map((one) => (
            <button
              key={one}
              type="button"
              className="choice"
              aria-pressed={as === one}
              onClick={() => setAs(one)}
            >
              {one}
            </button>
          ))}
        </fieldset>
        {data ? <Chosen {...{ data, as, path, setPath, language, setLanguage }} /> : null}
      </div>
      {error ? <p className="form-trouble">{error.message}</p> : null}
      {data || error ? null : <p className="pending">The pages are being made …</p>}
      {old ? <p className="pending">Being made anew …</p> : null}
      {data && as === 'Site' ? (
        <iframe
          title={`The page as it will be published, in ${LANGUAGES[language]}`}
          sandbox="allow-same-origin"
          src={`${data.root}${language}/${path}`}
        />
      ) : null}
      {as === 'Document' ? <Documents {...{ language, prices }} /> : null}
      {data && as === 'Still' ? (
        <Stills printing={printing ?? firstIn(data)} {...{ language, prices }} />
      ) : null}
    </section>
  );
}

function firstIn({ pages }: PreviewAnswer): string {
  return pages.find(({ printing }) => printing !== null)?.printing ?? '';
}

interface ChosenProps {
  readonly data: PreviewAnswer;
  readonly as: (typeof AS)[number];
  readonly path: string;
  readonly setPath: (path: string) => void;
  readonly language: keyof typeof LANGUAGES;
  readonly setLanguage: (language: keyof typeof LANGUAGES) => void;
}

function Chosen({ data, as, path, setPath, language, setLanguage }: ChosenProps) {
  const book = useBook();
  return (
    <>
      {as === 'Document' ? null : (
        <select aria-label="Page" value={path} onChange={({ target }) => setPath(target.value)}>
          {data.pages.map((page) => (
            <option key={page.path} value={page.path}>
              {page.printing === null ? pageTitle(page.path) : shortName(book, page.printing)}
            </option>
          ))}
        </select>
      )}
      <select
        aria-label="Language"
        value={language}
        onChange={({ target }) => setLanguage(target.value as keyof typeof LANGUAGES)}
      >
        {data.languages.map((tag) => (
          <option key={tag} value={tag} lang={tag}>
            {LANGUAGES[tag]}
          </option>
        ))}
      </select>
    </>
  );
}
