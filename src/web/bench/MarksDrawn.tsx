import type { BenchFace, BenchMark } from '../../contract/index.ts';
import { sayP } from '../words/index.ts';
import type { Label } from './dimensions.ts';
import { type Leader, leadersOf } from './leaders.ts';
import { Opening } from './Opening.tsx';
import { atOrigin, holds, type Part, type Place, toBox } from './part.ts';
import { isHeld, kindName, saySize } from './tell.ts';
import type { CopyWork } from './useCopyWork.ts';
import type { View } from './useView.ts';

/** What the numbers of marks are placed by. */
export interface Round {
  readonly box: Part;
  /** Of the whole drawing. */
  readonly width: number;
  /** Words that stand beside the card, which no number may cover. */
  readonly labels: readonly Label[];
}

/** The numbers of the marks that are in view, beside the card; `at` counts in the list of marks. */
export function markLeaders(
  { marks }: BenchFace,
  { part }: Pick<View, 'part'>,
  { box, width, labels }: Round,
  chosen: number | undefined,
): readonly Leader[] {
  const seen = marks
    .map((mark, at) => ({ mark, at }))
    .filter(({ mark, at }) => (isHeld(mark) || at === chosen) && holds(part, mark.centre));
  const out = Math.min(122, box.x - 14);
  const middle = box.x + box.width / 2;
  const column = (x: number) => ({
    x,
    top: box.y + 4,
    bottom: box.y + box.height - 4,
    taken: labels.filter(({ at }) => at[0] < middle === x < middle).map(stretchOf),
  });
  const places = seen.map(({ mark }) => toBox(part, box, mark.centre));
  return leadersOf(
    places,
    middle,
    column(box.x - out),
    column(Math.min(box.x + box.width + out, width - 14)),
  ).map((leader) => ({ ...leader, at: seen[leader.at]?.at ?? 0 }));
}

/** Room over and under the words of a label that a number keeps clear of, its own half included. */
const CLEAR = 22;

function stretchOf({ at: [, y], lines }: Label): readonly [number, number] {
  return [y - 4 - CLEAR, y - 4 + 17 * (lines.length - 1) + CLEAR];
}

interface ShapesProps {
  readonly marks: readonly BenchMark[];
  readonly view: View;
  readonly box: Part;
  readonly chosen: number | undefined;
  readonly leaders: readonly Leader[];
}

/** The marks on the card, and the lines that lead to their numbers. */
export function MarkShapes({ marks, view, box, chosen, leaders }: ShapesProps) {
  return (
    <g className="marks">
      <Opening box={box}>
        {marks.map((mark, at) =>
          !isHeld(mark) && at !== chosen ? null : (
            <Shape
              key={`${mark.kind}${mark.centre.join()}`}
              path={shapeOf(mark, view.part, atOrigin(box))}
              name={at === chosen ? 'mark chosen' : 'mark'}
            />
          ),
        )}
      </Opening>
      {leaders.map(({ at, number, place }) => (
        <Shape
          key={at}
          path={`M${number.map(Math.round).join(' ')}L${place.map(Math.round).join(' ')}`}
          name={at === chosen ? 'leader chosen' : 'leader'}
        />
      ))}
    </g>
  );
}

/** A line in magenta on a line of paper, so that it is seen on every ground. */
function Shape({ path, name }: { readonly path: string; readonly name: string }) {
  return (
    <g className={name}>
      <path className="paper" d={path} />
      <path className="ink" d={path} />
    </g>
  );
}

/** Less than this, in drawing units, is ringed: its outline could not be seen. */
const SMALL = 9;

function shapeOf(
  { polygon, length, box: mm, centre, kind }: BenchMark,
  part: Part,
  box: Part,
): string {
  const places = polygon.map((point) => toBox(part, box, point));
  const [from, to] = [toBox(part, box, [mm[0], mm[1]]), toBox(part, box, [mm[2], mm[3]])];
  if (places.length < 2 || Math.max(to[0] - from[0], to[1] - from[1]) < SMALL) {
    return ring(toBox(part, box, centre));
  }
  const open = length !== null && LINES.includes(kind);
  return `M${places.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}${open ? '' : 'Z'}`;
}

/** Kinds of mark that are drawn along a line, not round an area. */
export const LINES: readonly string[] = ['scratch', 'crease', 'print-line'];

function ring([x, y]: Place): string {
  const r = SMALL * 0.7;
  return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}

interface NumbersProps {
  readonly face: BenchFace;
  readonly leaders: readonly Leader[];
  readonly work: CopyWork;
}

/** The numbers at the ends of the leader lines; each chooses its mark. */
export function MarkNumbers({ face, leaders, work: { chosen, choose } }: NumbersProps) {
  return leaders.map(({ at, number: [x, y] }) => {
    const mark = face.marks[at];
    if (!mark) return null;
    const words = `Mark ${at + 1}, ${kindName(mark.kind)} ${saySize(mark)}, probability ${sayP(mark.p)}`;
    return (
      <button
        type="button"
        key={at}
        className="mark-number"
        style={{ left: x - 12, top: y - 12 }}
        aria-label={words}
        aria-pressed={at === chosen}
        onClick={() => choose(at === chosen ? undefined : at)}
      >
        {at + 1}
      </button>
    );
  });
}
