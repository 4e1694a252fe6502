import type { BenchFace, BenchMark } from '../../contract/index.ts';
import { Num } from '../marks/index.ts';
import { capital, count, outOfHundred, sayP } from '../words/index.ts';
import {
  facesOf,
  isHeld,
  kindName,
  sayLimits,
  saySize,
  shownBy,
  standing,
  whereOn,
} from './tell.ts';
import type { CopyWork } from './useCopyWork.ts';

interface Props {
  readonly work: CopyWork;
  readonly face: BenchFace;
}

/** The marks of the face that is shown, with the same numbers as on the drawing. */
export function MarkTable({ work, face }: Props) {
  const limits = sayLimits(face);
  const others = facesOf(work.copy).filter(([side]) => side !== work.side);
  const numbered = face.marks.map((mark, at) => ({ mark, at }));
  const held = numbered.filter(({ mark }) => isHeld(mark));
  const rest = numbered.filter(({ mark }) => !isHeld(mark));
  return (
    <section>
      <h3>
        Marks on the {work.side} <span>size and probability</span>
      </h3>
      <Rows marks={held} work={work} />
      {rest.length > 0 ? (
        // A mark of these that was chosen on the drawing is shown at once.
        <details className="folded" open={rest.some(({ at }) => at === work.chosen)}>
          <summary>
            {count(rest.length, 'trace', 'traces')} less probable than not, or rejected
          </summary>
          <Rows marks={rest} work={work} />
        </details>
      ) : null}
      {limits ? <p className="detail said-of">{limits}</p> : null}
      {others.map(([side, { marks }]) => (
        <p key={side} className="detail said-of">
          <button type="button" className="plain" onClick={() => work.turn(side)}>
            On the {side}: {standing(marks).length || 'no'}{' '}
            {standing(marks).length === 1 ? 'mark' : 'marks'}
          </button>
        </p>
      ))}
    </section>
  );
}

interface RowsProps {
  readonly marks: readonly { readonly mark: BenchMark; readonly at: number }[];
  readonly work: CopyWork;
}

function Rows({ marks, work }: RowsProps) {
  return (
    <ol className="marks-list">
      {marks.map(({ mark, at }) => (
        <Row key={`${mark.kind}${mark.centre.join()}`} mark={mark} at={at} work={work} />
      ))}
    </ol>
  );
}

interface RowProps {
  readonly mark: BenchMark;
  readonly at: number;
  readonly work: CopyWork;
}

function Row({ mark, at, work }: RowProps) {
  const { chosen, choose, face } = work;
  const open = chosen === at;
  const size = face?.size?.mm;
  const where = size ? `${whereOn(mark.centre, size)}, ` : '';
  const why =
    mark.state === 'confirmed'
      ? 'You confirmed it.'
      : `Of marks that look like this one, ${outOfHundred(mark.p)} are on the card and no trace of light, ground or picture.`;
  return (
    <li className={isHeld(mark) ? mark.state : `${mark.state} doubtful`}>
      <div className="claim-line">
        <button
          type="button"
          className="plain mark-name"
          aria-expanded={open}
          onClick={() => choose(open ? undefined : at)}
        >
          <span className="ordinal">{at + 1}</span> {capital(kindName(mark.kind))}
        </button>
        <span className="figure">
          {saySize(mark)}{' '}
          {mark.state === 'rejected' ? 'rejected' : <Num why={why}>{sayP(mark.p)}</Num>}
        </span>
      </div>
      <p className="detail">
        {where}
        {shownBy(mark)}
        {mark.wear ? `; ${mark.wear}` : ''}
        {mark.state === 'confirmed' && mark.from === 'machine' ? ', confirmed' : ''}
        {mark.words.length > 0 ? `: “${mark.words.join('”, “')}”` : ''}
      </p>
      {open ? <Judge mark={mark} at={at} work={work} /> : null}
    </li>
  );
}

function Judge({ mark, at, work }: RowProps) {
  const { act, busy, side } = work;
  const { kind, centre, state, annotations } = mark;
  const judge = (word: 'confirmed' | 'rejected') =>
    act(
      { to: 'marks', body: { do: 'judge', side, kind, centre, word } },
      `Mark ${at + 1} was ${word}.`,
    );
  const back = () =>
    act(
      { to: 'marks', body: { do: 'remove', annotations } },
      `Your word on mark ${at + 1} was taken back.`,
    );
  return (
    <div className="acts">
      {annotations.length > 0 ? (
        <button type="button" className="choice" disabled={busy} onClick={back}>
          {mark.from === 'hand' ? 'Take it away' : 'Take back'}
        </button>
      ) : null}
      {state === 'open' ? (
        <>
          <button
            type="button"
            className="choice"
            disabled={busy}
            onClick={() => judge('confirmed')}
          >
            Confirm
          </button>
          <button
            type="button"
            className="choice"
            disabled={busy}
            onClick={() => judge('rejected')}
          >
            Reject
          </button>
        </>
      ) : null}
    </div>
  );
}
