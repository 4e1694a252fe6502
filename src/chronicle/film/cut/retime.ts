import type { Cut, Take } from '../types.ts';
import type { Mark } from './marks.ts';

/** How much longer than read at the rate a line may stay, where the next mark is far. Judgement, no source. */
const MOST = 2;

/** A stretch of the recording in which lines were said one after the other without a hold. */
interface Stretch {
  readonly takes: readonly Take[];
  readonly from: number;
  readonly to: number;
  /** Seconds within it in which the reader held. */
  readonly held: readonly (readonly [number, number])[];
}

/**
 * The lines at the places at which they were said, by the marks of a recording. A line that was said
 * again counts where it was said last. Lines without a mark share the time between the marked ones
 * round them as their reading times tell; while the reader held, nothing is said. Lines before the
 * first mark, and those of which nothing is known, are left out. Throws `RangeError` where a mark
 * names a line that the script does not have.
 */
export function retimedCut(planned: Cut, marks: readonly Mark[]): Cut {
  const places = new Map(planned.takes.map(({ line }, i) => [line.id, i]));
  const lines = marks.flatMap((mark, i) => {
    if (mark.is !== 'line') return [];
    const place = places.get(mark.line);
    if (place === undefined) throw new RangeError(`the script has no line ${mark.line}`);
    return [{ place, i, at: mark.at }];
  });
  const last = lines.filter(
    ({ place }, n) => !lines.slice(n + 1).some((one) => one.place === place),
  );
  const marked = new Set(last.map(({ place }) => place));
  const takes = last.flatMap(({ place, i, at }) => {
    const after = planned.takes.findIndex((_, next) => next > place && marked.has(next));
    const said = planned.takes.slice(place, after < 0 ? undefined : after);
    return laid(stretchOf(said, at, marks.slice(i + 1)));
  });
  const length = Math.max(0, ...takes.map(({ to }) => to), ...marks.map(({ at }) => at));
  return { ...planned, takes: takes.sort((a, b) => a.from - b.from), length };
}

/** From its mark to the next line or the end; where none follows, as long as reading takes. */
function stretchOf(takes: readonly Take[], from: number, after: readonly Mark[]): Stretch {
  const next = after.findIndex(({ is }) => is === 'line' || is === 'end');
  const within = next < 0 ? after : after.slice(0, next);
  const reading = takes.reduce((sum, { line }) => sum + line.seconds, 0);
  const holds = within.filter(({ is }) => is === 'hold' || is === 'on');
  const held: (readonly [number, number])[] = [];
  const to = after[next]?.at ?? Number.POSITIVE_INFINITY;
  for (const [i, { is, at }] of holds.entries()) {
    if (is === 'hold') held.push([at, holds[i + 1]?.at ?? to]);
  }
  const spoken = Math.min(reading * MOST, to - from - held.reduce((sum, [a, b]) => sum + b - a, 0));
  return { takes, from, to: from + Math.max(0, next < 0 ? reading : spoken), held };
}

/** Each line of a stretch at its share of it; `to` counts what is said, without the holds. */
function laid({ takes, from, to, held }: Stretch): Take[] {
  const reading = takes.reduce((sum, { line }) => sum + line.seconds, 0);
  let said = 0;
  return takes.map((take) => {
    const start = from + ((to - from) * said) / reading;
    said += take.line.seconds;
    const end = from + ((to - from) * said) / reading;
    return { ...take, from: after(start, held), to: before(end, held) };
  });
}

/** The time at which so much was said, holds before it counted; a line begins after the hold. */
function after(time: number, held: Stretch['held']): number {
  return held.reduce((so, [a, b]) => (so >= a ? so + b - a : so), time);
}

/** The same for a line that ends where the hold begins. */
function before(time: number, held: Stretch['held']): number {
  return held.reduce((so, [a, b]) => (so > a ? so + b - a : so), time);
}
