import { daysDrawn } from './days.ts';
import { type Around, roomOn, sheet } from './sheet.ts';
import { INK } from './svg.ts';
import type { ToldOnStill } from './told.ts';
import type { Frame } from './types.ts';
import { paragraph, sizeFor, wrapped } from './wrap.ts';

/** A printing with its day, how sure that is, and the claims beneath the days. */
export function titleStill(told: ToldOnStill, frame: Frame, around: Around): string {
  const { x, y, width, height } = roomOn(frame);
  const { measure } = around;
  const tall = frame.name === 'tall';
  const name = {
    size: sizeFor(told.name.title, width, 'serif', [92, 76, 60], 2, measure),
    face: 'serif',
  } as const;
  const names = wrapped(told.name.title, width, name, measure, 3);
  const detail = { size: 44, fill: INK.second };
  const details = wrapped(told.name.detail, width, detail, measure, 2);
  const day = {
    size: sizeFor(told.day, width, 'serif', [168, 136, 104, 80], tall ? 2 : 1, measure),
    face: 'serif',
  } as const;
  const days = wrapped(told.day, width, day, measure, 3);
  const when = { size: 46 };
  const whens = wrapped(told.when, width, when, measure, 4);
  const gap = tall ? 90 : 34;
  let at = y + name.size * 0.8;
  const parts: string[] = [paragraph(x, at, names, name, 1.12)];
  at += (names.length - 1) * name.size * 1.12 + 66;
  parts.push(paragraph(x, at, details, detail));
  at += Math.max(0, details.length - 1) * 57 + gap + day.size;
  parts.push(paragraph(x, at, days, day, 1.05));
  at += (days.length - 1) * day.size * 1.05 + 84;
  parts.push(paragraph(x, at, whens, when));
  at += whens.length * 60 + (tall ? 60 : 0);
  const left = y + height - at;
  if (left > 150)
    parts.push(
      daysDrawn(
        told.printing.release,
        {
          x,
          y: at,
          width,
          height: Math.min(left, tall ? 460 : 300),
        },
        told.sayDay,
      ),
    );
  return sheet(frame, around, told.place, parts);
}
