import type { FaceAnswer, MeasuredSize, PointMm, SizeMm } from '../../bench/index.ts';
import { sizeNumbers, withDoubt } from '../report/numbers.ts';
import { CYAN, path, text } from './strokes.ts';

/** How far outside the card the lines of the size and of the borders lie, in millimetres. */
const SIZE_OUT = 15;
const BORDER_OUT = 9;
const TICK = 1;

/** Width above the card and height left of it. */
export function sizeLines(size: MeasuredSize, [width, height]: SizeMm): readonly string[] {
  const [wide, high] = sizeNumbers(size);
  return [
    ...across(0, width, -SIZE_OUT, [width / 2, -SIZE_OUT - 1.5], wide),
    ...down(0, height, -SIZE_OUT, [-SIZE_OUT - 1.5, height / 2], high, 'end'),
  ];
}

/** Each border beside the mid-line that it was measured on: left and right below, top and bottom at the right. */
export function borderLines({ frame }: FaceAnswer, [width, height]: SizeMm): readonly string[] {
  const borders = frame?.bordersMm;
  const sds = frame?.bordersSdMm;
  if (!frame || !borders || !sds) return [];
  const said = (side: keyof typeof borders) => withDoubt(borders[side], sds[side]);
  const below = height + BORDER_OUT;
  const beside = width + BORDER_OUT;
  const { leftRight, topBottom } = frame.centering;
  return [
    ...across(0, borders.left, below, [0, below + 4], said('left')),
    ...across(width - borders.right, width, below, [width, below + 4], said('right')),
    text([width / 2, below + 4], shares(leftRight), CYAN),
    ...down(0, borders.top, beside, [beside + 2, 2.5], said('top'), 'start'),
    ...down(
      height - borders.bottom,
      height,
      beside,
      [beside + 2, height - 0.5],
      said('bottom'),
      'start',
    ),
    text([beside + 2, height / 2], shares(topBottom), CYAN, 'start'),
  ];
}

function shares([a, b]: readonly [number, number]): string {
  return `${a.toFixed(1)} / ${b.toFixed(1)}`;
}

function across(from: number, to: number, y: number, at: PointMm, words: string) {
  const ticks = [from, to].map((x) =>
    path(
      [
        [x, y - TICK],
        [x, y + TICK],
      ],
      CYAN,
    ),
  );
  const line: readonly PointMm[] = [
    [from, y],
    [to, y],
  ];
  return [path(line, CYAN), ...ticks, text(at, words, CYAN)];
}

function down(
  from: number,
  to: number,
  x: number,
  at: PointMm,
  words: string,
  anchor: 'start' | 'end',
) {
  const ticks = [from, to].map((y) =>
    path(
      [
        [x - TICK, y],
        [x + TICK, y],
      ],
      CYAN,
    ),
  );
  const line: readonly PointMm[] = [
    [x, from],
    [x, to],
  ];
  return [path(line, CYAN), ...ticks, text(at, words, CYAN, anchor)];
}
