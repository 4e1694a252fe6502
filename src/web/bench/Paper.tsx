import type { BenchFace, BenchSide } from '../../contract/index.ts';
import { capital, count, sayP } from '../words/index.ts';
import { DimensionLines } from './DimensionLines.tsx';
import { cardBox, dimensionsOf } from './dimensions.ts';
import { MarkShapes, markLeaders } from './MarksDrawn.tsx';
import { Measured } from './Measured.tsx';
import { cardPath, Photograph } from './Photograph.tsx';
import { facesOf, isHeld, kindName, sayLimits, saySize, whereOn } from './tell.ts';
import type { CopyWork } from './useCopyWork.ts';
import { useView } from './useView.ts';

/** Width and greatest height of one face on paper, in CSS pixels of 1/96 inch. */
const WIDE = 344;
const TALL = 400;

/** Both faces as they are printed on paper, whatever the screen shows. */
export function PaperFaces({ work }: { readonly work: CopyWork }) {
  return (
    <div className="on-paper">
      {facesOf(work.copy).map(([side, face]) => (
        <PaperFace key={side} side={side} face={face} work={work} />
      ))}
    </div>
  );
}

interface Props {
  readonly side: BenchSide;
  readonly face: BenchFace;
  readonly work: CopyWork;
}

function PaperFace({ side, face, work }: Props) {
  const view = useView(face.size?.mm ?? [1, 1]);
  const sure = face.size !== null && (face.outline?.p ?? 0) >= 0.5;
  if (!sure) {
    return (
      <p className="slip-note">
        {capital(side)}: not measured. {face.whyNot ?? 'The outline is not sure.'}
      </p>
    );
  }
  const box = cardBox(WIDE, TALL, view.size);
  const round = dimensionsOf(face, box, true);
  const leaders = markLeaders(face, view, { box, width: WIDE, labels: round.labels }, undefined);
  return (
    <figure className="paper-face">
      <figcaption>{capital(side)}</figcaption>
      <svg width={WIDE} height={box.all} aria-hidden="true">
        <Photograph
          view={view}
          box={box}
          path={cardPath(work.copy.id, side)}
          stamp={work.stampOf(side)}
        />
        <MarkShapes marks={face.marks} view={view} box={box} chosen={undefined} leaders={leaders} />
        <DimensionLines {...round} />
        {leaders.map(({ at, number: [x, y] }) => (
          <g key={at} className="paper-number">
            <circle cx={x} cy={y} r={9} />
            <text x={x} y={y + 4}>
              {at + 1}
            </text>
          </g>
        ))}
      </svg>
    </figure>
  );
}

/** Most marks that are printed; the rest is counted. */
const MOST = 14;

/** The marks and measurements of both faces, as they are printed on paper. */
export function PaperLists({ work: { copy } }: { readonly work: CopyWork }) {
  return (
    <div className="on-paper">
      {facesOf(copy).map(([side, face]) => (
        <div key={side}>
          <PaperMarks side={side} face={face} />
          <Measured face={face} title={`Measured on the ${side}`} />
        </div>
      ))}
    </div>
  );
}

function PaperMarks({ side, face }: Pick<Props, 'side' | 'face'>) {
  const held = face.marks.map((mark, at) => ({ mark, at })).filter(({ mark }) => isHeld(mark));
  const left = face.marks.length - Math.min(held.length, MOST);
  const limits = sayLimits(face);
  return (
    <section>
      <h3>
        Marks on the {side} <span>size and probability</span>
      </h3>
      <ol className="paper-marks">
        {held.slice(0, MOST).map(({ mark, at }) => (
          <li key={at}>
            <span>
              <span className="ordinal">{at + 1}</span> {capital(kindName(mark.kind))}
              {face.size ? `, ${whereOn(mark.centre, face.size.mm)}` : ''}
            </span>
            <span>
              {saySize(mark)}, {sayP(mark.p)}
            </span>
          </li>
        ))}
      </ol>
      {left > 0 ? (
        <p className="detail">{count(left, 'trace', 'traces')} more are on the screen only.</p>
      ) : null}
      {limits ? <p className="detail">{limits}</p> : null}
    </section>
  );
}
