import { type FormEvent, useState } from 'react';
import { LINES } from './MarksDrawn.tsx';
import { kindName } from './tell.ts';
import type { CopyWork } from './useCopyWork.ts';
import type { MarkPen } from './usePen.ts';

const KINDS = [
  'scratch',
  'dent',
  'crease',
  'corner-wear',
  'edge-wear',
  'stain',
  'speck',
  'print-line',
] as const;

interface Props {
  readonly work: CopyWork;
  readonly pen: MarkPen;
  readonly close: () => void;
}

/** What a mark that is drawn by hand is, and in whose words. */
export function AddMark({ work, pen, close }: Props) {
  const [kind, setKind] = useState<string>(KINDS[0]);
  const [words, setWords] = useState('');
  const line = LINES.includes(kind);
  const enough = pen.points.length >= (line ? 2 : 3);
  const add = async (event: FormEvent) => {
    event.preventDefault();
    const points = pen.points.map(([x, y]): [number, number] => [x, y]);
    const { side, copy } = work;
    const body = { do: 'add', side, kind, points, closed: !line, words } as const;
    const said = `A ${kindName(kind)} was added to ${copy.id}.`;
    if (await work.act({ to: 'marks', body }, said)) close();
  };
  return (
    <form className="claim-form add-mark" onSubmit={add}>
      <p className="hint">
        Draw {line ? 'along it' : 'round it'} with the pointer. By keyboard: choose the card, arrow
        keys move the cross by 1 mm, with Shift by 0.1 mm, Enter sets a point, Backspace takes the
        last one away. {pen.points.length} points so far.
      </p>
      <label className="field">
        <span>It is a</span>
        <select value={kind} onChange={(event) => setKind(event.target.value)}>
          {KINDS.map((one) => (
            <option key={one} value={one}>
              {kindName(one)}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>In your words</span>
        <input value={words} maxLength={2000} onChange={(event) => setWords(event.target.value)} />
      </label>
      <div className="acts">
        <button type="submit" className="choice" disabled={!enough || work.busy}>
          Add it
        </button>
        <button type="button" className="choice" onClick={close}>
          Leave it
        </button>
      </div>
    </form>
  );
}
