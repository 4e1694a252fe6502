import { civilOf, dayFrom } from '../../../evidence/index.ts';
import { type Around, type Room, roomOn, sheet } from './sheet.ts';
import { box, INK, line, words } from './svg.ts';
import type { ToldOnStill } from './told.ts';
import { type Frame, LEAST } from './types.ts';
import { fitted } from './wrap.ts';

const LANE = { wide: 48, tall: 78 } as const;
/** A day of a year number, for the axis. */
const dayOfYear = (year: number) => dayFrom(`${String(year).padStart(4, '0')}-01-01`);

/** Where a printing stands among all of them: a lane each, its days on one axis of years. */
export function placeStill(
  told: ToldOnStill,
  all: readonly ToldOnStill[],
  frame: Frame,
  around: Around,
): string | null {
  const room = roomOn(frame);
  const lanes = nearest(told, all, Math.floor((room.height - 60) / LANE[frame.name]));
  const spans = lanes.map(spanOf);
  const known = spans.filter((span) => span !== null).flat();
  if (known.length === 0) return null;
  const names = room.width * (frame.name === 'tall' ? 0.56 : 0.42);
  const axis = {
    x: room.x + names,
    y: room.y,
    width: room.width - names,
    height: LANE[frame.name] * lanes.length,
  };
  const [from, to] = yearsAround(Math.min(...known), Math.max(...known));
  const place = (day: number) =>
    axis.x + ((day - dayOfYear(from)) / (dayOfYear(to) - dayOfYear(from))) * axis.width;
  const years = yearLines(from, to, axis, place);
  const drawn = lanes.map((one, i) => {
    const y = axis.y + i * LANE[frame.name];
    const mine = one.printing.id === told.printing.id;
    const type = { size: frame.name === 'tall' ? 38 : LEAST, fill: mine ? INK.ink : INK.second };
    const span = spans[i];
    return [
      mine
        ? box(room.x - 24, y, room.width + 24, LANE[frame.name], INK.lane) +
          box(room.x - 24, y, 10, LANE[frame.name], INK.ink)
        : '',
      words(
        room.x,
        y + LANE[frame.name] * 0.68,
        fitted(one.name.short, names - 30, type, around.measure),
        type,
      ),
      span ? ribbon(place(span[0]), place(span[1]), y, LANE[frame.name], mine) : '',
    ].join('');
  });
  return sheet(frame, around, told.place, [
    ...drawn.filter((_, i) => lanes[i] === told),
    ...years,
    ...drawn.filter((_, i) => lanes[i] !== told),
  ]);
}

/** The lanes round one, as many as find room. */
function nearest(
  told: ToldOnStill,
  all: readonly ToldOnStill[],
  most: number,
): readonly ToldOnStill[] {
  const at = all.indexOf(told);
  const start = Math.max(0, Math.min(at - Math.floor(most / 2), all.length - most));
  return all.slice(start, start + most);
}

/** First and last day of what a release can be with 95 %. */
function spanOf({ printing: { release } }: ToldOnStill): readonly [number, number] | null {
  const { interval95, best } = release;
  if (interval95 !== null) return [dayFrom(interval95[0]), dayFrom(interval95[1])];
  return best === null ? null : [dayFrom(best), dayFrom(best)];
}

function yearsAround(first: number, last: number): readonly [number, number] {
  return [civilOf(first).year, civilOf(last).year + 1];
}

function yearLines(
  from: number,
  to: number,
  axis: Room,
  place: (day: number) => number,
): readonly string[] {
  const step =
    [1, 2, 5, 10, 20, 50].find((years) => (to - from) / years <= axis.width / 130) ?? 100;
  const first = Math.ceil(from / step) * step;
  const years = Array.from(
    { length: Math.floor((to - first) / step) + 1 },
    (_, i) => first + i * step,
  );
  return years.map((year) => {
    const x = place(dayOfYear(year));
    return (
      line(
        [
          [x, axis.y],
          [x, axis.y + axis.height + 12],
        ],
        INK.rule,
        2,
      ) +
      words(x, axis.y + axis.height + 52, String(year), {
        size: LEAST,
        fill: INK.second,
        anchor: 'middle',
      })
    );
  });
}

/** Where the days lie; a single day is still seen, and the others recede. */
function ribbon(from: number, to: number, y: number, lane: number, mine: boolean): string {
  const wide = Math.max(mine ? 14 : 8, to - from);
  const high = lane * (mine ? 0.72 : 0.5);
  return box((from + to - wide) / 2, y + (lane - high) / 2, wide, high, mine ? INK.ink : INK.third);
}
