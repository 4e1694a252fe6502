import { useState } from 'react';
import type { BenchSide } from '../../contract/index.ts';
import { Beside } from './Beside.tsx';
import { CardView } from './CardView.tsx';
import { MorePictures } from './MorePictures.tsx';
import { PictureView } from './PictureView.tsx';
import { ReliefView } from './ReliefView.tsx';
import { TakingPictures } from './TakingPictures.tsx';
import type { CopyWork } from './useCopyWork.ts';

const SIDES: readonly BenchSide[] = ['front', 'back'];
const WAYS = {
  card: 'Straight down',
  still: 'As taken',
  raking: 'Raking light',
  lamp: 'Lamps in turn',
  relief: 'Moved lamp',
  beside: 'Side by side',
} as const;
type Way = keyof typeof WAYS;

/** The pictures of a face, one way of looking after the other. */
export function Easel({ work }: { readonly work: CopyWork }) {
  const { copy, side, face } = work;
  const sure = face !== null && sureOf(work);
  const [wanted, setWay] = useState<Way>();
  const [lamp, setLamp] = useState(0);
  const own = copy.pictures.filter((one) => one.side === side);
  const ways = (Object.keys(WAYS) as Way[]).filter((way) => isThere(way, work, sure));
  const way = wanted && ways.includes(wanted) ? wanted : (ways[0] ?? 'still');
  const shown = own.filter(({ light }) => light === way);
  const look = (to: Way) => {
    work.moving.leave();
    setWay(to);
  };
  const picture = shown[Math.min(lamp, shown.length - 1)];
  return (
    <>
      <div className="filters">
        {SIDES.map((one) => (
          <Choice
            key={one}
            on={one === side}
            words={one === 'front' ? 'Front' : 'Back'}
            act={() => work.turn(one)}
          />
        ))}
        <span className="gap" />
        {ways.map((one) => (
          <Choice key={one} on={one === way} words={WAYS[one]} act={() => look(one)} />
        ))}
      </div>
      {face?.whyNot ? <p className="slip-note">{face.whyNot}</p> : null}
      {way === 'lamp' && shown.length > 1 ? (
        <label className="lamp">
          Lamp {picture?.lamp}
          <input
            type="range"
            min={0}
            max={shown.length - 1}
            value={lamp}
            onChange={(event) => setLamp(Number(event.target.value))}
          />
        </label>
      ) : null}
      {face && (way === 'card' || way === 'raking' || way === 'lamp') ? (
        <CardView work={work} face={face} of={way === 'card' ? undefined : picture?.name} />
      ) : null}
      {way === 'still' && face && picture ? <PictureView work={work} name={picture.name} /> : null}
      {way === 'relief' && face ? <ReliefView work={work} face={face} /> : null}
      {way === 'beside' && face ? <Beside work={work} face={face} /> : null}
      {own.length === 0 ? (
        <TakingPictures work={work} side={side} />
      ) : (
        <details className="folded">
          <summary>Add pictures</summary>
          <MorePictures work={work} />
        </details>
      )}
    </>
  );
}

/** Whether there is anything to look at that way; all but the picture as taken need a sure outline. */
function isThere(way: Way, { copy, side }: CopyWork, sure: boolean): boolean {
  const lit = (light: string) =>
    copy.pictures.filter((one) => one.side === side && one.light === light).length;
  if (way === 'still') return lit('still') > 0;
  if (!sure || way === 'card') return sure;
  if (way === 'relief') return lit('lamp') >= 4;
  return way === 'beside' ? copy.beside.some((one) => one.side === side) : lit(way) > 0;
}

function sureOf({ face }: CopyWork): boolean {
  return face?.outline !== null && (face?.outline.p ?? 0) >= 0.5 && face?.size !== null;
}

interface ChoiceProps {
  readonly on: boolean;
  readonly words: string;
  readonly act: () => void;
}

function Choice({ on, words, act }: ChoiceProps) {
  return (
    <button type="button" className="choice" aria-pressed={on} onClick={act}>
      {words}
    </button>
  );
}
