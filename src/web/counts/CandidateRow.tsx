import type { WireMatch } from '../../contract/index.ts';
import { Chance } from '../marks/index.ts';
import { outOfHundred } from '../words/index.ts';
import type { Candidate, Word } from './words.ts';

interface Props {
  readonly match: Candidate;
  readonly name: string;
  /** The stop of the Tab key; arrow keys lead on from it. */
  readonly first: boolean;
  readonly ticked: boolean;
  readonly tick: (printing: string) => void;
  readonly say: (word: Word) => void;
  /** What is said where this one is rejected. */
  readonly without: Word;
}

/** One printing that a label may be of, with what speaks for it. */
export function CandidateRow({ match, name, first, ticked, tick, say, without }: Props) {
  const { printing, p } = match;
  return (
    <li className="candidate" tabIndex={first ? 0 : -1} data-printing={printing}>
      <label className="candidate-name">
        <input type="checkbox" checked={ticked} onChange={() => tick(printing)} /> {name}
      </label>
      <Chance
        p={p}
        why={`That copies of this printing are counted under the label: ${outOfHundred(p)} such pairs hold. ${compared(match)}`}
      />
      <span className="detail compared">{compared(match)}</span>
      <span className="candidate-acts">
        <button
          type="button"
          className="choice"
          aria-label={`It is ${name}`}
          onClick={() => say([printing])}
        >
          It is this one
        </button>
        <button
          type="button"
          className="plain"
          aria-label={`It is not ${name}`}
          title={
            without === 'none'
              ? 'Leaves none of the dossier’s printings'
              : 'Leaves the likely others'
          }
          onClick={() => say(without)}
        >
          Not this one
        </button>
      </span>
    </li>
  );
}

/** Which fields of the label and the printing go together, in words. */
function compared({ agrees, near, differs }: WireMatch): string {
  const parts = [
    agrees.length > 0 ? `Same ${list(agrees)}` : '',
    near.length > 0 ? `nearly the same ${list(near)}` : '',
    differs.length > 0 ? `another ${list(differs)}` : '',
  ].filter(Boolean);
  const text = parts.join('; ');
  return text === '' ? 'Nothing to go by.' : `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

const NAMES: Readonly<Record<string, string>> = { place: 'language or market', called: 'name' };

function list(fields: readonly string[]): string {
  return fields.map((field) => NAMES[field] ?? field).join(', ');
}
