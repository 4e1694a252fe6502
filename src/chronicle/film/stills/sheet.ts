import { box, drawing, INK, registerMark, words } from './svg.ts';
import { type Frame, LEAST, type Measure } from './types.ts';
import { fitted } from './wrap.ts';

/** What stands on every still: the card, and the day that its figures hold for. */
export interface Around {
  readonly subject: string;
  /** In the film's language; empty where nothing has a day. */
  readonly asOf: string;
  readonly measure: Measure;
}

/** The room that is left for a still's own things. */
export interface Room {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const MARGIN = 40;
const PADDING = 88;
const HEAD = 72;

/** The part of a sheet inside its head and foot. */
export function roomOn({ width, height }: Frame): Room {
  const inset = MARGIN + PADDING;
  return {
    x: inset,
    y: inset + HEAD,
    width: width - 2 * inset,
    height: height - 2 * inset - 2 * HEAD,
  };
}

/** A proof sheet on the table: register marks, the strip of inks, head and foot. */
export function sheet(
  frame: Frame,
  around: Around,
  right: string,
  parts: readonly string[],
): string {
  const { width, height } = frame;
  const { x, y, width: wide, height: high } = roomOn(frame);
  const small = { size: LEAST, fill: INK.second };
  const rightWidth = around.measure(right, 'sans', LEAST);
  const foot = y + high + HEAD + 20;
  return drawing(width, height, [
    box(0, 0, width, height, INK.table),
    box(MARGIN, MARGIN, width - 2 * MARGIN, height - 2 * MARGIN, INK.sheet),
    ...[INK.cyan, INK.magenta, INK.yellow, INK.ink].map((ink, i) =>
      box(MARGIN - 14, y + i * 34, 14, 34, ink),
    ),
    registerMark(MARGIN + 44, MARGIN + 44, 20, INK.third),
    registerMark(width - MARGIN - 44, height - MARGIN - 44, 20, INK.third),
    words(x, y - 44, fitted(around.subject, wide - rightWidth - 40, small, around.measure), small),
    words(x + wide, y - 44, right, { ...small, anchor: 'end' }),
    words(x, foot, around.asOf, small),
    ...parts,
  ]);
}
