import { chance } from '../../src/maths/index.ts';
import { type Art, paintArt } from './art.ts';
import {
  type Canvas,
  type Contour,
  canvasOf,
  fill,
  fillWith,
  type Point,
  turned,
} from './canvas.ts';
import { words } from './letters.ts';
import { hsv, mixed, type Rgb } from './light.ts';
import { layered } from './noise.ts';
import { ellipse, hole, rectangle, rounded, stroke } from './shapes.ts';

/** How the art is set off from the border; `none`: it runs to the edge. */
export type FrameStyle = 'plain' | 'double' | 'line' | 'none';

/** What is printed on one side of a card, in millimetres. */
export interface Face {
  readonly sizeMm: Point;
  readonly cornerRadiusMm: number;
  /** Of the print before it is turned, about the middle of the card. */
  readonly borderMm: { left: number; right: number; top: number; bottom: number };
  readonly borderColour: Rgb;
  readonly lineColour: Rgb;
  readonly frameStyle: FrameStyle;
  /** Clockwise as seen. */
  readonly printRotationDeg: number;
  readonly art: Art | 'back';
  readonly hue: number;
  /** 0 to 1: how strongly the art glitters. */
  readonly foil: number;
  readonly seed: number;
  /** A small detail of the text that tells printings apart. */
  readonly textSeed?: number;
  /** Specks of this copy's own print, by which it is known again; none without a seed. */
  readonly flawSeed?: number;
  /** How thick the strokes of letters are, against the usual; 1 where not told. */
  readonly strokeWeight?: number;
  /** A printing whose bell is of thin ink. */
  readonly paleBell?: boolean;
}

/** The corners of the outermost frame in card millimetres; null where there is none. */
export function frameCornersMm(face: Face): readonly [Point, Point, Point, Point] | null {
  if (face.frameStyle === 'none') return null;
  const place = placeOf(face);
  const [a, b, c, d] = rectangle(...innerBox(face)) as [Point, Point, Point, Point];
  return [place(a), place(b), place(c), place(d)];
}

/** Border widths along the card's two mid-lines; null where there is none. */
export function bordersOnMidLines(face: Face): Face['borderMm'] | null {
  const corners = frameCornersMm(face);
  if (!corners) return null;
  const [a, b, c, d] = corners;
  const [w, h] = face.sizeMm;
  const x = (p: Point, q: Point) => p[0] + ((q[0] - p[0]) * (h / 2 - p[1])) / (q[1] - p[1]);
  const y = (p: Point, q: Point) => p[1] + ((q[1] - p[1]) * (w / 2 - p[0])) / (q[0] - p[0]);
  return { left: x(a, d), right: w - x(b, c), top: y(a, b), bottom: h - y(d, c) };
}

/** Paints one side of a card at so many texels to the millimetre. */
export function paintFace(face: Face, scale: number): Canvas {
  const canvas = canvasOf(face.sizeMm, scale);
  const place = placeOf(face);
  const [w, h] = face.sizeMm;
  const bleed = [-4, -4, w + 4, h + 4] as const;
  const box = face.frameStyle === 'none' ? bleed : innerBox(face);
  const base = rectangle(...bleed);
  fill(canvas, [base], face.borderColour);
  const { art } = face;
  if (art === 'back') paintBack(canvas, face, box, place);
  else paintArt(canvas, { ...face, art }, box, place);
  if (face.foil > 0) glitter(canvas, face, box, place);
  if (face.art !== 'back') paintText(canvas, face, place);
  paintBorder(canvas, face, place, base);
  if (face.flawSeed !== undefined) paintFlaws(canvas, face, face.flawSeed);
  return canvas;
}

function placeOf({ sizeMm: [w, h], printRotationDeg }: Face): (point: Point) => Point {
  const turn = { centre: [w / 2, h / 2] as const, degrees: printRotationDeg };
  return (point) => turned(turn, point);
}

type Box = readonly [number, number, number, number];

function innerBox({ sizeMm: [w, h], borderMm }: Face): Box {
  return [borderMm.left, borderMm.top, w - borderMm.right, h - borderMm.bottom];
}

function inset([x0, y0, x1, y1]: Box, by: number): Contour {
  return rectangle(x0 + by, y0 + by, x1 - by, y1 - by);
}

function paintBorder(canvas: Canvas, face: Face, place: (p: Point) => Point, base: Contour): void {
  if (face.frameStyle === 'none') return;
  const box = innerBox(face);
  const ring = (from: Contour, to: number, colour: Rgb) =>
    fill(canvas, [from.map(place), hole(inset(box, to)).map(place)], colour);
  ring(
    base.map(([x, y]): Point => [x * 1.2 - 5, y * 1.2 - 5]),
    0,
    face.borderColour,
  );
  const band = mixed(face.lineColour, face.borderColour, 0.35).map(
    (v) => v * 0.5,
  ) as unknown as Rgb;
  const rings: Readonly<Record<FrameStyle, readonly (readonly [number, number, Rgb])[]>> = {
    none: [],
    plain: [],
    line: [
      [0, 0.3, face.lineColour],
      [0.3, 1.05, face.borderColour],
      [1.05, 1.3, face.lineColour],
    ],
    double: [
      [0, 0.35, face.lineColour],
      [0.35, 1.6, band],
      [1.6, 1.95, face.lineColour],
    ],
  };
  for (const [from, to, colour] of rings[face.frameStyle]) ring(inset(box, from), to, colour);
  if (face.frameStyle !== 'double') return;
  for (const [x, y] of inset(box, 1)) {
    fill(canvas, [ellipse(place([x, y]), 0.95)], face.lineColour);
    fill(canvas, [ellipse(place([x, y]), 0.45)], band);
  }
}

/** A title plate above and a box of text below, in an invented script. */
function paintText(canvas: Canvas, face: Face, place: (p: Point) => Point): void {
  const [w, h] = face.sizeMm;
  const weight = face.strokeWeight ?? 1;
  const paper: Rgb = [0.78, 0.74, 0.64];
  const ink: Rgb = [0.02, 0.018, 0.03];
  const on = (contours: readonly Contour[], colour: Rgb, alpha = 1) =>
    fill(
      canvas,
      contours.map((one) => one.map(place)),
      colour,
      alpha,
    );
  on([rounded(8, 6.5, w - 8, 11.2, 2.2)], paper);
  for (const mark of words([10.5, 10.1], 2.5, 2, face.seed, 0.16 * weight).contours)
    on([mark], ink);
  on([rounded(7, h - 31.5, w - 7, h - 9, 0.6)], paper, 0.72);
  for (let line = 0; line < 6; line++) {
    const seed = line === 2 ? (face.textSeed ?? face.seed * 7 + line) : face.seed * 7 + line;
    const { contours } = words([8.6, h - 28 + 2.75 * line], 1.35, 7, seed, 0.14 * weight);
    for (const mark of contours) if (mark.every(([x]) => x < w - 8.2)) on([mark], ink);
  }
}

function paintBack(canvas: Canvas, face: Face, box: Box, place: (p: Point) => Point): void {
  const [w, h] = face.sizeMm;
  const dark = hsv(face.hue, 0.6, 0.35);
  const light = hsv(face.hue + 0.04, 0.4, 0.68);
  fillWith(canvas, [rectangle(...box).map(place)], 1, (x, y) =>
    mixed(dark, light, 0.5 * layered(x / 20, y / 20, face.seed, 3)),
  );
  for (let i = -14; i < 26; i++) {
    const x = (i * w) / 12;
    fill(canvas, [stroke(place([x, 0]), place([x + h * 0.6, h]), 0.22)], light);
    fill(canvas, [stroke(place([x, 0]), place([x - h * 0.6, h]), 0.22)], light);
  }
  for (let k = 0; k < 4; k++) {
    const r = 15 - 3.2 * k;
    fill(canvas, [ellipse(place([w / 2, h / 2]), r, r * 1.25)], k % 2 ? light : dark);
  }
  for (const mark of words([w / 2 - 4, h / 2 + 2], 3.4, 1, face.seed).contours)
    fill(canvas, [mark.map(place)], [0.8, 0.76, 0.6]);
}

/** Specks where dust kept the ink off, or where a blot of it fell. */
function paintFlaws(canvas: Canvas, { sizeMm: [w, h] }: Face, seed: number): void {
  const random = chance(seed);
  for (let i = 0; i < 16; i++) {
    const at: Point = [2 + (w - 4) * random.uniform(), 2 + (h - 4) * random.uniform()];
    const bare = random.uniform() < 0.6;
    const colour: Rgb = bare ? [0.78, 0.76, 0.7] : [0.03, 0.03, 0.04];
    fill(canvas, [ellipse(at, 0.12 + 0.16 * random.uniform(), undefined, 0, 14)], colour, 0.85);
  }
}

/** Marks the art as foil, as far as the border leaves it bare. */
function glitter(canvas: Canvas, face: Face, box: Box, place: (p: Point) => Point): void {
  const { width, scale, margin, values } = canvas;
  const keep = (x: number, y: number): Rgb => {
    const column = Math.floor((x + margin) * scale);
    const k = 4 * (Math.floor((y + margin) * scale) * width + column);
    return [values[k]!, values[k + 1]!, values[k + 2]!];
  };
  fillWith(canvas, [rectangle(...box).map(place)], 1, keep, face.foil);
}
