import { useState } from 'react';
import type { BenchCopy, BenchFace } from '../../contract/index.ts';
import { useComparison } from '../wire/index.ts';
import { Difference } from './Difference.tsx';
import { Pane } from './Pane.tsx';
import { cardPath } from './Photograph.tsx';
import type { CopyWork } from './useCopyWork.ts';
import { useView } from './useView.ts';
import { Zooms } from './Zooms.tsx';

interface Props {
  readonly work: CopyWork;
  readonly face: BenchFace;
}

/** The face beside another picture: both move as one, or blink in one place. */
export function Beside({ work, face }: Props) {
  const { copy, side, stamp } = work;
  const choices = copy.beside.filter((one) => one.side === side);
  const [wanted, setWanted] = useState(choices[0]?.file ?? '');
  const [blinks, setBlinks] = useState(false);
  const [other, setOther] = useState(false);
  const [listed, setListed] = useState(false);
  const view = useView(face.size?.mm ?? [1, 1]);
  const comparison = useComparison(copy.id, side, wanted, listed);
  const chosen = choices.find(({ file }) => file === wanted);
  if (!chosen) return <p className="detail">There is no picture to lay it beside.</p>;
  const swap = () => {
    setBlinks(true);
    setOther((last) => !last);
  };
  const names = [`${copy.id}, ${side}`, chosen.words] as const;
  const panes = [
    { name: names[0], path: cardPath(copy.id, side) },
    { name: names[1], path: cardPath(copy.id, side, wanted) },
  ].filter((_, k) => !blinks || k === (other ? 1 : 0));
  return (
    <>
      <BesideTools
        {...{ choices, wanted, blinks, swap }}
        choose={(file) => {
          setWanted(file);
          setListed(false);
        }}
        both={() => setBlinks(false)}
        list={() => setListed(true)}
      />
      <div className={blinks ? 'panes one' : 'panes'}>
        {panes.map(({ name, path }) => (
          <figure key={name}>
            <figcaption aria-live={blinks ? 'polite' : 'off'}>{name}</figcaption>
            <Pane
              label={`${name}, seen straight down. Plus and minus zoom, arrow keys move both, B swaps them.`}
              {...{ view, path, stamp }}
              keys={{ b: swap }}
            />
          </figure>
        ))}
      </div>
      <div className="bench-tools">
        <Zooms view={view} />
        <span className="detail">
          Both are laid straight by their own outlines, and move as one.
        </span>
      </div>
      {listed ? (
        <Difference {...{ face, names }} comparison={comparison.data} error={comparison.error} />
      ) : null}
    </>
  );
}

interface ToolsProps {
  readonly choices: BenchCopy['beside'];
  readonly wanted: string;
  readonly blinks: boolean;
  readonly choose: (file: string) => void;
  readonly swap: () => void;
  readonly both: () => void;
  readonly list: () => void;
}

function BesideTools({ choices, wanted, blinks, choose, swap, both, list }: ToolsProps) {
  return (
    <div className="filters">
      <label className="dropped">
        <span>Beside</span>
        <select value={wanted} onChange={(event) => choose(event.target.value)}>
          {choices.map(({ file, words }) => (
            <option key={file} value={file}>
              {words}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="choice" onClick={swap}>
        Swap in one place
      </button>
      <button type="button" className="choice" aria-pressed={!blinks} onClick={both}>
        Two easels
      </button>
      <button type="button" className="choice" onClick={list}>
        List the differences
      </button>
    </div>
  );
}
