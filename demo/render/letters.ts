import { chance } from '../../src/maths/index.ts';
import type { Contour, Point } from './canvas.ts';
import { ellipse, stroke } from './shapes.ts';

/** Contours of words in an invented script: bows and strokes on a grid, no letter of any alphabet. */
export function words(
  [x, y]: Point,
  height: number,
  count: number,
  seed: number,
  weight = 0.14,
): { readonly contours: readonly Contour[]; readonly width: number } {
  const random = chance(seed);
  const contours: Contour[] = [];
  let at = x;
  for (let word = 0; word < count; word++) {
    const letters = 2 + random.below(5);
    for (let k = 0; k < letters; k++) {
      contours.push(...letter([at, y], height, random.below(24), weight * height));
      at += 0.72 * height;
    }
    at += 0.45 * height;
  }
  return { contours, width: at - x };
}

function letter([x, y]: Point, h: number, sign: number, width: number): Contour[] {
  const random = chance(9000 + sign);
  const at = (): Point => [x + (random.below(3) / 2) * 0.5 * h, y - (random.below(4) / 3) * h];
  const marks: Contour[] = [stroke([x, y], [x, y - h * (0.5 + random.below(2) / 2)], width)];
  for (let k = 0; k < 1 + (sign % 2); k++) {
    const a = at();
    const b = at();
    if (a[0] !== b[0] || a[1] !== b[1]) marks.push(stroke(a, b, width));
  }
  if (sign % 3 === 0) marks.push(ellipse(at(), width * 0.9, width * 0.9, 0, 10));
  return marks;
}
