import { box, drawing, INK, registerMark, words } from './svg.ts';
import type { ToldOnStill } from './told.ts';
import { type Frame, LEAST, type Measure } from './types.ts';
import { fitted, paragraph, wrapped } from './wrap.ts';

/** A strip over the lower third of the picture, see-through round it: name, day and doubt. */
export function lowerThird(
  told: ToldOnStill,
  frame: Frame,
  asOf: string,
  measure: Measure,
): string {
  const { width, height } = frame;
  const tall = frame.name === 'tall';
  const margin = tall ? 56 : 96;
  const wide = tall ? width - 2 * margin : 1240;
  const inner = wide - 112 - 40;
  const name = { size: 60, face: 'serif' } as const;
  const day = { size: 52 };
  const doubt = { size: 38, fill: INK.second };
  const names = wrapped(told.name.title, inner, name, measure, tall ? 2 : 1);
  const doubts = wrapped(told.when, inner, doubt, measure, tall ? 4 : 2);
  const high = 66 + names.length * 70 + 66 + doubts.length * 48 + (asOf === '' ? 0 : 52) + 20;
  const y = tall ? height * 0.74 - high : height - 72 - high;
  const x = margin + 112;
  const dayAt = y + 26 + names.length * 70 + 68;
  const doubtAt = dayAt + 60;
  return drawing(width, height, [
    box(margin, y, wide, high, INK.sheet),
    box(margin, y, 14, high, INK.ink),
    registerMark(margin + 62, y + 74, 24, INK.third),
    paragraph(x, y + 82, names, name, 70 / 60),
    words(x, dayAt, fitted(told.day, inner, day, measure), day),
    paragraph(x, doubtAt, doubts, doubt, 48 / 38),
    words(x, doubtAt + doubts.length * 48 + 2, asOf, { size: LEAST, fill: INK.second }),
  ]);
}
