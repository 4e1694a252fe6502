import type { Place } from './part.ts';

/** Where the numbers of one side may stand, top to bottom in drawing units. */
export interface Column {
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  /** A stretch that words take. */
  readonly taken: readonly [from: number, to: number];
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

function columnOf(marks: readonly Pointed[], { x, top, bottom, taken }: Column): Leader[] {
  const middle = (taken[0] + taken[1]) / 2;
  const ordered = [...marks].sort((a, b) => a.place[1] - b.place[1]);
  const above = ordered.filter(({ place }) => place[1] < middle);
  const below = ordered.filter(({ place }) => place[1] >= middle);
  const put = (some: readonly Pointed[], from: number, to: number) => {
    const ys = spread(
      some.map(({ place }) => place[1]),
      from,
      to,
    );
    return some.map(({ place, at }, k) => ({ at, place, number: [x, ys[k] ?? from] as const }));
  };
  return [...put(above, top, taken[0]), ...put(below, taken[1], bottom)];
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
