import { useState } from 'react';
import type { WireLabelled } from '../../contract/index.ts';
import { sayEdtf } from '../../evidence/index.ts';
import { useBook } from '../app/context.ts';
import { Num } from '../marks/index.ts';
import { shortName } from '../view/index.ts';
import { count, sayP } from '../words/index.ts';
import { CandidateRow } from './CandidateRow.tsx';
import { labelKeys } from './labelKeys.ts';
import { useWord } from './useWord.ts';
import { candidatesOf, type Word, wordWithout } from './words.ts';

interface Props {
  readonly label: WireLabelled;
  /** What its service is called. */
  readonly title: string;
}

/** A label with the printings that it may be; confirmed, rejected or split by keys and buttons. */
export function LabelItem({ label, title }: Props) {
  const book = useBook();
  const write = useWord(label);
  const candidates = candidatesOf(label);
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const say = (word: Word) => {
    write(word);
    setTicked([]);
  };
  const tick = (printing: string) =>
    setTicked((last) =>
      last.includes(printing) ? last.filter((one) => one !== printing) : [...last, printing],
    );
  const split = () => (ticked.length > 1 ? say(ticked) : undefined);
  const keys = labelKeys({ candidates, say, tick, split });
  const foreign = label.matches.find(({ printing }) => printing === null)?.p ?? 0;
  return (
    <li className="label-item" onKeyDown={keys}>
      <h3>
        <span className="label-words">{label.label}</span>
        <span>
          {title}, {count(label.total, 'copy', 'copies')} as of {sayEdtf(label.as_of)}
        </span>
      </h3>
      <Said label={label} undo={() => say('nothing')} />
      <ul>
        {candidates.map((match, at) => (
          <CandidateRow
            key={match.printing}
            match={match}
            name={shortName(book, match.printing)}
            first={at === 0}
            ticked={ticked.includes(match.printing)}
            {...{ tick, say, without: wordWithout(candidates, match.printing) }}
          />
        ))}
      </ul>
      <div className="label-acts">
        <span className="detail">
          Another card than the dossier’s{' '}
          <Num why="The probability that the label is of a printing that the dossier does not have.">
            {sayP(foreign)}
          </Num>
        </span>
        <button type="button" className="choice" disabled={ticked.length < 2} onClick={split}>
          It holds the ticked ones
        </button>
        <button type="button" className="choice" onClick={() => say('none')}>
          None of them
        </button>
      </div>
    </li>
  );
}

function Said({ label: { confirmed }, undo }: { label: WireLabelled; undo: () => void }) {
  const book = useBook();
  if (confirmed !== null && confirmed.length === 0) return null;
  const names = confirmed?.map((id) => shortName(book, id)).join(' and ');
  return (
    <p className="detail said-of">
      You said: {names ?? 'none of the dossier’s printings'}.{' '}
      <button type="button" className="plain" onClick={undo}>
        Take it back
      </button>
    </p>
  );
}
