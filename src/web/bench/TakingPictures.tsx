import type { BenchSide } from '../../contract/index.ts';
import { MorePictures } from './MorePictures.tsx';
import type { CopyWork } from './useCopyWork.ts';

interface Props {
  readonly work: Pick<CopyWork, 'copy'>;
  readonly side?: BenchSide;
}

/** Where pictures go and how to take them without harm. */
export function TakingPictures({ work, side = 'front' }: Props) {
  const folder = `desk/photos/${work.copy.id}`;
  return (
    <div className="taking">
      <p className="why">There is no picture of this {side === 'front' ? 'copy' : 'side'} yet.</p>
      <MorePictures work={work} />
      <p className="why">Or put it into the folder of the dossier, by these names:</p>
      <dl className="facts">
        {NAMES.map(([name, what]) => (
          <div key={name}>
            <dt>
              <code>
                {folder}/{name}
              </code>
            </dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
      <h3>Taking them</h3>
      <ul className="bulleted">
        {HOW.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <h3>Take care of the copy</h3>
      <ul className="bulleted">
        {CARE.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </div>
  );
}

const NAMES = [
  ['front.jpg', 'the front, lit evenly; from this one everything else is measured'],
  ['back.jpg', 'the back, in the same way'],
  ['front.raking.jpg', 'the front by one low lamp: scratches and creases'],
  ['front.light-1.jpg', 'the front by the first of several lamps; -2, -3 … by the next: dents'],
] as const;

const HOW = [
  'Light: even, from both sides, no flash; no glare on the card. A ground of one colour that is not the border’s.',
  'All four sides in the picture with ground beyond them, nothing over an edge; from straight above, the card some 2,000 pixels high.',
  'Scale: the card’s known size stands in dossier.json (width_mm, height_mm); a scan carries its own scale.',
  'Chart: where colours matter, lay a colour chart beside the card, not on it, in the same light.',
  'One lamp low at one side, 10 to 15 degrees above the table, the room dark: that is raking light.',
  'Lamps in turn: camera and card stay as they are, one lamp after the other from at least four sides. A shiny ball beside the card shows where each lamp stood.',
] as const;

const CARE = [
  'A scanner’s lid presses: lay the card down by itself, and lower the lid without weight, or leave it open in a dark room.',
  'Lamps grow hot and bend card and foil: keep them away, and turn them off between pictures.',
  'Taking a tight sleeve off can bend corners. If it does not slide off by itself, take the picture through the sleeve; the tool says what that hides.',
  'Do not open a slab for a picture.',
] as const;
