import { useState } from 'react';
import { useBook } from '../app/context.ts';
import { shortName } from '../view/index.ts';
import { useStills } from '../wire/index.ts';

const KINDS: Readonly<Record<string, string>> = {
  title: 'Day and doubt',
  card: 'The card, pointed at',
  counts: 'Counts',
  place: 'Place in the chronology',
  'lower-third': 'Lower third',
};

interface Props {
  readonly printing: string;
  readonly language: string;
  readonly prices: boolean;
}

/** The stills of one printing, one at a time, wide or tall. */
export function Stills({ printing, language, prices }: Props) {
  const book = useBook();
  const {
    data,
    error,
    isPlaceholderData: old,
  } = useStills(...([book.dossier.version, printing, language, prices] as const));
  const [kind, setKind] = useState('title');
  const [frame, setFrame] = useState('wide');
  const ending = (file: string) => file.endsWith(`-${kind}.png`) && file.includes(`/${frame}/`);
  const file = data?.files.find(ending);
  const name = shortName(book, printing);
  return (
    <figure className="still">
      <div className="preview-acts">
        <select aria-label="Still" value={kind} onChange={({ target }) => setKind(target.value)}>
          {Object.entries(KINDS).map(([one, words]) => (
            <option key={one} value={one}>
              {words}
            </option>
          ))}
        </select>
        <select aria-label="Frame" value={frame} onChange={({ target }) => setFrame(target.value)}>
          <option value="wide">1920 × 1080</option>
          <option value="tall">1080 × 1920</option>
        </select>
      </div>
      {error ? <p className="form-trouble">{error.message}</p> : null}
      {old || !(data || error) ? <p className="pending">The stills are being drawn …</p> : null}
      {data && file ? (
        <img
          className={frame}
          src={data.root + file}
          alt={`${KINDS[kind]}: ${name}, as in a film`}
        />
      ) : null}
      {data && !file ? <p className="detail">There is nothing to draw of {name}.</p> : null}
      {data?.left.map((sentence) => (
        <p key={sentence} className="detail">
          {sentence}
        </p>
      ))}
    </figure>
  );
}
