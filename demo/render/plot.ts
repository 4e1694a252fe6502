import type { Chance } from '../../src/maths/index.ts';
import { type Canvas, type Contour, fill, fillWith, type Point } from './canvas.ts';
import type { Rgb } from './light.ts';
import { rectangle } from './shapes.ts';

/** Where art is painted, and with which chance and colours. */
export interface Plot {
  readonly canvas: Canvas;
  /** Left, top, right and bottom in print millimetres. */
  readonly box: readonly [number, number, number, number];
  /** Print millimetres to card millimetres. */
  readonly place: (point: Point) => Point;
  readonly random: Chance;
  readonly hue: number;
  readonly paleBell: boolean;
}

/** Fills contours given in print millimetres. */
export function put(plot: Pick<Plot, 'canvas' | 'place'>, contours: Contour[], colour: Rgb): void {
  fill(
    plot.canvas,
    contours.map((contour) => contour.map(plot.place)),
    colour,
  );
}

/** Fills the box of a plot with a colour for each texel. */
export function wash({ canvas, box, place }: Plot, colourAt: (x: number, y: number) => Rgb): void {
  fillWith(canvas, [rectangle(...box).map(place)], 1, colourAt);
}
