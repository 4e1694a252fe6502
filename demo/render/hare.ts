import type { Point } from './canvas.ts';
import { hsv, mixed } from './light.ts';
import { layered } from './noise.ts';
import { type Plot, put, wash } from './plot.ts';
import { ellipse, rectangle, stroke } from './shapes.ts';

/** A hare beside a bell over the tide; `side` 1: the bell on the left. */
export function hare(plot: Plot, side: 1 | -1): void {
  const { box, hue } = plot;
  const [x0, y0, x1, y1] = box;
  const sea = y0 + (y1 - y0) * 0.66;
  wash(plot, (x, y) =>
    mixed(
      hsv(hue + 0.58, 0.45, 0.55),
      hsv(hue + 0.1, 0.3, 0.93),
      Math.min(1, (y - y0) / (sea - y0)) * (0.75 + 0.25 * layered(x / 12, y / 7, 3, 3)),
    ),
  );
  for (let i = 0; i < 30; i++) {
    const y = sea - 3 + i * 1.25;
    const wave = Array.from(
      { length: 50 },
      (_, k): Point => [x0 + ((x1 - x0) * k) / 49, y + 0.7 * Math.sin(k * 0.45 + i * 1.9)],
    );
    put(
      plot,
      [[...wave, [x1, y + 9], [x0, y + 9]]],
      hsv(hue + 0.53, 0.5, 0.62 - 0.016 * i + 0.1 * (i % 2)),
    );
  }
  const middle = (x0 + x1) / 2;
  const at = (x: number, y: number): Point => [middle + side * x, sea + y];
  const fur = hsv(hue + 0.07, 0.45, 0.55);
  const pale = hsv(hue + 0.09, 0.2, 0.88);
  for (const [x, y, rx, ry, turn] of HARE) put(plot, [ellipse(at(x, y), rx, ry, side * turn)], fur);
  put(plot, [ellipse(at(12.2, -3), 4.4, 3.4, side * 0.3)], pale);
  put(plot, [ellipse(at(9.4, -24.5), 0.9, 6.4, side * -0.12)], pale);
  put(plot, [ellipse(at(9.2, -15.6), 0.75)], [0.01, 0.01, 0.012]);
  bell(plot, at(-3.5, -38.5));
}

const HARE = [
  [15, -4, 8.5, 7, 0.2],
  [20, 1, 4, 5.5, 0.4],
  [9.5, 1.5, 2.2, 5, -0.2],
  [10.4, -14, 5, 4.2, 0.3],
  [9.4, -24.5, 1.7, 7.8, -0.12],
  [13.2, -23.5, 1.7, 7.6, 0.22],
  [24, -2, 2.4, 2.2, 0],
] as const;

function bell(plot: Plot, [x, y]: Point): void {
  const { hue } = plot;
  const brass = plot.paleBell ? hsv(hue + 0.12, 0.4, 0.86) : hsv(hue + 0.12, 0.8, 0.62);
  const outline: Point[] = [];
  for (let i = 0; i <= 20; i++) {
    const t = i / 20;
    outline.push([x - 2.4 - 4.2 * t ** 3 - 1.6 * Math.sin(t * 1.7), y + 12 * t]);
  }
  const other = outline.map(([u, v]): Point => [2 * x - u, v]).reverse();
  put(plot, [rectangle(x - 0.35, y - 8, x + 0.35, y + 1)], hsv(hue + 0.08, 0.5, 0.25));
  put(plot, [[...outline, ...other]], brass);
  put(plot, [ellipse([x, y], 3.3, 1.6)], brass);
  put(plot, [ellipse([x, y + 13], 1.7)], hsv(hue + 0.1, 0.8, 0.4));
  for (let i = 0; i < 3; i++)
    put(
      plot,
      [stroke([x - 5.5 + i, y + 7 + 1.6 * i], [x + 5.5 - i, y + 7 + 1.6 * i], 0.35)],
      hsv(hue + 0.1, 0.8, 0.35),
    );
}
