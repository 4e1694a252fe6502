import type { Place } from './part.ts';

type Stretch = readonly [from: number, to: number];

/** Where the numbers of one side may stand, top to bottom in drawing units. */
export interface Column {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  /** Stretches that words take. */
  readonly taken: readonly Stretch[];
}

/** A number beside the card and the place that it points at. */
export interface Leader {
  readonly at: number;
  readonly number: Place;
  readonly place: Place;
}

/** Room that a number wants, in drawing units. */
const ROOM = 28;

/**
 * Puts the number of each mark into the margin on its own side of `middle`, as near to its mark as
 * the others let it; no two stand closer than 28 while there is room, and none on words.
 */
export function leadersOf(
  places: readonly Place[],
  middle: number,
  left: Column,
  right: Column,
): readonly Leader[] {
  const all = places.map((place, at) => ({ place, at }));
  return [
    ...columnOf(
      all.filter(({ place }) => place[0] < middle),
      left,
    ),
    ...columnOf(
      all.filter(({ place }) => place[0] >= middle),
      right,
    ),
  ].sort((a, b) => a.at - b.at);
}

interface Pointed {
  readonly place: Place;
  readonly at: number;
}

function columnOf(marks: readonly Pointed[], column: Column): Leader[] {
  const open = openStretches(column);
  const nearest = ({ place: [, y] }: Pointed) =>
    open.reduce((best, one) => (away(one, y) < away(best, y) ? one : best));
  const ordered = [...marks].sort((a, b) => a.place[1] - b.place[1]);
  return open.flatMap((stretch) => {
    const own = ordered.filter((mark) => nearest(mark) === stretch);
    const ys = spread(
      own.map(({ place }) => place[1]),
      ...stretch,
    );
    return own.map(({ place, at }, k) => ({
      at,
      place,
      number: [column.x, ys[k] ?? stretch[0]] as const,
    }));
  });
}

function away([from, to]: Stretch, y: number): number {
  return Math.max(from - y, y - to, 0);
}

/** What words leave of a column, without the bits that have no room for a number; all of it where nothing is left. */
function openStretches({ top, bottom, taken }: Column): readonly Stretch[] {
  const open: Stretch[] = [];
  let from = top;
  for (const [start, end] of [...taken].sort((a, b) => a[0] - b[0])) {
    open.push([from, Math.min(start, bottom)]);
    from = Math.max(from, end);
  }
  open.push([from, bottom]);
  const roomy = open.filter(([start, end]) => end - start >= ROOM / 2);
  return roomy.length > 0 ? roomy : [[top, bottom]];
}

/** Rising places moved apart within their bounds, each as little as a push from above and below needs. */
function spread(wanted: readonly number[], from: number, to: number): readonly number[] {
  const gap = wanted.length > 1 ? Math.min(ROOM, (to - from) / (wanted.length - 1)) : ROOM;
  const ys: number[] = [];
  for (const y of wanted) ys.push(Math.max(y, from, (ys.at(-1) ?? Number.NEGATIVE_INFINITY) + gap));
  let floor = to;
  for (let k = ys.length - 1; k >= 0; k--) {
    ys[k] = Math.min(ys[k] as number, floor);
    floor = (ys[k] as number) - gap;
  }
  return ys;
}
