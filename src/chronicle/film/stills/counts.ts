import type { Account, Count } from '../../account/types.ts';
import { tellEdtf } from '../../words/days.ts';
import { countInterval } from '../../words/figures.ts';
import { tellCount } from '../../words/numbers.ts';
import type { Phrases } from '../../words/types.ts';
import { type Around, type Room, roomOn, sheet } from './sheet.ts';
import { box, INK, line, words } from './svg.ts';
import type { ToldOnStill } from './told.ts';
import { type Frame, LEAST } from './types.ts';
import { fitted, paragraph, wrapped } from './wrap.ts';

/** What the services have counted, each as of its own day; null where none lists the printing. */
export function countsStill(
  told: ToldOnStill,
  frame: Frame,
  around: Around,
  account: Account,
  phrases: Phrases,
): string | null {
  const { counts } = told.printing;
  if (counts.length === 0) return null;
  const { measure } = around;
  const room = roomOn(frame);
  const tall = frame.name === 'tall';
  const heading = { size: 64, face: 'serif' } as const;
  const headings = wrapped(told.name.short, room.width, heading, measure, 2);
  const shown = counts.slice(0, tall ? 4 : 3);
  const notes = wrapped(
    !tall && shown.length > 2 ? '' : told.extant,
    room.width,
    { size: 38 },
    measure,
    3,
  );
  const from = room.y + headings.length * 72 + 20;
  const high = Math.min(
    tall ? 320 : 196,
    (room.height - (from - room.y) - notes.length * 50 - 30) / shown.length,
  );
  const rows = shown.map((count, i) => {
    const title = account.services.find(({ id }) => id === count.service)?.title ?? count.service;
    return countRow(
      count,
      [title, told.tops.get(count.service) ?? ''],
      { x: room.x, y: from + i * high, width: room.width, height: high },
      around,
      phrases,
      tall,
    );
  });
  const noteAt = from + shown.length * high + 56;
  return sheet(frame, around, told.place, [
    paragraph(room.x, room.y + 54, headings, heading, 72 / 64),
    ...rows,
    paragraph(room.x, noteAt, notes, { size: 38, fill: INK.second }, 50 / 38),
  ]);
}

/** Copies counted at the left, the share at a top grade on a line from 0 to 1 at the right. */
function countRow(
  count: Count,
  [title, top]: readonly [string, string],
  room: Room,
  { measure }: Around,
  phrases: Phrases,
  tall: boolean,
): string {
  const { x, y, width, height } = room;
  const half = tall ? width : width * 0.5;
  const sure = count.lumpedWith.length === 0;
  const said = tellCount(phrases, count.total);
  const copies = phrases.units.copies(sure ? said : phrases.vague.about(said), count.total === 1);
  const small = { size: LEAST, fill: INK.second };
  const day = phrases.asOf(title, tellEdtf(phrases, count.asOf));
  const interval = sure ? '' : countInterval(count.total95, phrases);
  const under = interval === '' ? day : `${day}; ${interval}`;
  const big = { size: 76, face: 'serif' } as const;
  const parts = [
    line(
      [
        [x, y],
        [x + width, y],
      ],
      INK.rule,
      2,
    ),
    words(x, y + 84, fitted(copies, half - 30, big, measure), big),
    paragraph(x, y + 138, wrapped(under, half - 30, small, measure, 2), small, 1.2),
  ];
  if (count.rate === null) return parts.join('');
  const bar = tall
    ? { x, y: y + 190, width, height: height - 190 }
    : { x: x + half + 20, y: y + 24, width: half - 20, height };
  const note = { size: LEAST, fill: INK.second };
  const notes = wrapped(top, bar.width, note, measure, 3);
  return [...parts, shareLine(count, bar), paragraph(bar.x, bar.y + 96, notes, note, 1.2)].join('');
}

/** A share on a line from 0 to 1, its interval like a dimension on a drawing. */
function shareLine({ rate, rate95: [low, high] }: Count, { x, y, width }: Room): string {
  const at = (share: number) => x + share * width;
  const mark = (x0: number, y0: number, x1: number, y1: number) =>
    line(
      [
        [x0, y0],
        [x1, y1],
      ],
      INK.cyan,
      6,
    );
  return [
    box(x, y + 25, width, 6, INK.rule),
    mark(at(low), y + 28, at(high), y + 28),
    mark(at(low), y + 10, at(low), y + 46),
    mark(at(high), y + 10, at(high), y + 46),
    box(at(rate ?? 0) - 5, y + 4, 10, 48, INK.ink),
  ].join('');
}
