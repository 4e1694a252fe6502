import type { Rgb } from './light.ts';

/** A point in millimetres. */
export type Point = readonly [number, number];

/** A closed line in millimetres; holes run the other way round. */
export type Contour = readonly Point[];

/** Values in linear light: red, green, blue and the share of foil, four to a texel. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
  /** Texels to the millimetre. */
  readonly scale: number;
  /** Millimetres beyond the card on every side. */
  readonly margin: number;
}

/** Millimetres of a print that lies turned on its card. */
export interface Turn {
  readonly centre: Point;
  readonly degrees: number;
}

/** An empty canvas for a card of that size. */
export function canvasOf([w, h]: Point, scale: number, margin = 1): Canvas {
  const width = Math.ceil((w + 2 * margin) * scale);
  const height = Math.ceil((h + 2 * margin) * scale);
  return { width, height, values: new Float32Array(width * height * 4), scale, margin };
}

/** A point turned clockwise as seen about the centre of the turn. */
export function turned({ centre, degrees }: Turn, [x, y]: Point): Point {
  const c = Math.cos((degrees * Math.PI) / 180);
  const s = Math.sin((degrees * Math.PI) / 180);
  const [u, v] = [x - centre[0], y - centre[1]];
  return [centre[0] + c * u - s * v, centre[1] + s * u + c * v];
}

/** Paints what is inside the contours, each texel by the share of it that they cover, exactly. */
export function fill(canvas: Canvas, contours: readonly Contour[], colour: Rgb, alpha = 1): void {
  fillWith(canvas, contours, alpha, () => colour);
}

/** As `fill`, with a colour for each texel, by its millimetres. */
export function fillWith(
  canvas: Canvas,
  contours: readonly Contour[],
  alpha: number,
  colourAt: (x: number, y: number) => Rgb,
  foil?: number,
): void {
  const { scale, margin, width, values } = canvas;
  covered(canvas, contours, (column, row, coverage) => {
    const k = 4 * (row * width + column);
    const a = coverage * alpha;
    const [r, g, b] = colourAt((column + 0.5) / scale - margin, (row + 0.5) / scale - margin);
    values[k] = values[k]! + (r - values[k]!) * a;
    values[k + 1] = values[k + 1]! + (g - values[k + 1]!) * a;
    values[k + 2] = values[k + 2]! + (b - values[k + 2]!) * a;
    if (foil !== undefined) values[k + 3] = values[k + 3]! + (foil - values[k + 3]!) * a;
  });
}

let store = new Float32Array(1 << 16);

/** Calls `visit` for every texel that the contours cover, with the covered share of it. */
function covered(
  canvas: Canvas,
  contours: readonly Contour[],
  visit: (column: number, row: number, coverage: number) => void,
): void {
  const { scale, margin } = canvas;
  const toTexels = ([x, y]: Point): Point => [(x + margin) * scale, (y + margin) * scale];
  const lines = contours.map((contour) => contour.map(toTexels));
  let [left, right, top, bottom] = [canvas.width, 0, canvas.height, 0];
  for (const line of lines)
    for (const [x, y] of line) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  const x0 = Math.max(0, Math.floor(left));
  const y0 = Math.max(0, Math.floor(top));
  const w = Math.min(canvas.width, Math.ceil(right)) - x0;
  const h = Math.min(canvas.height, Math.ceil(bottom)) - y0;
  if (w <= 0 || h <= 0) return;
  const stride = w + 2;
  if (store.length < stride * h) store = new Float32Array(stride * h * 2);
  store.fill(0, 0, stride * h);
  for (const line of lines)
    for (let i = 0; i < line.length; i++)
      edge(stride, w, h, x0, y0, line[i]!, line[(i + 1) % line.length]!);
  for (let row = 0; row < h; row++) {
    let sum = 0;
    for (let column = 0; column < w; column++) {
      sum += store[row * stride + column]!;
      const coverage = Math.min(1, Math.abs(sum));
      if (coverage > 1e-4) visit(x0 + column, y0 + row, coverage);
    }
  }
}

/** Adds the signed area to the right of one edge, row by row; a running sum gives the coverage. */
function edge(
  stride: number,
  w: number,
  h: number,
  x0: number,
  y0: number,
  from: Point,
  to: Point,
): void {
  if (from[1] === to[1]) return;
  const down = from[1] < to[1];
  const [a, b] = down ? [from, to] : [to, from];
  const slope = (b[0] - a[0]) / (b[1] - a[1]);
  const [top, bottom] = [a[1] - y0, b[1] - y0];
  const first = Math.max(0, Math.floor(top));
  const last = Math.min(h, Math.ceil(bottom));
  for (let row = first; row < last; row++) {
    const from = Math.max(row, top);
    const until = Math.min(row + 1, bottom);
    const height = (until - from) * (down ? 1 : -1);
    const p = Math.min(w, Math.max(0, a[0] - x0 + (from - top) * slope));
    const q = Math.min(w, Math.max(0, a[0] - x0 + (until - top) * slope));
    spread(row * stride, Math.min(p, q), Math.max(p, q), height);
  }
}

/** One row's part of an edge that runs from x = p to x = q, spread on the texels it crosses. */
function spread(start: number, p: number, q: number, height: number): void {
  const first = Math.floor(p);
  if (q <= first + 1) {
    const mean = (p + q) / 2 - first;
    store[start + first] = store[start + first]! + height * (1 - mean);
    store[start + first + 1] = store[start + first + 1]! + height * mean;
    return;
  }
  const per = height / (q - p);
  let before = 0;
  for (let column = first; column < q + 1; column++) {
    // The area right of the edge within this column, as an integral of what lies left of x.
    const upTo = column + 1;
    const a = Math.max(p, column);
    const b = Math.min(q, upTo);
    const inside = b > a ? per * (b - a) * (upTo - (a + b) / 2) : 0;
    const passed = per * (Math.max(p, Math.min(q, column)) - p);
    const total = inside + passed;
    store[start + column] = store[start + column]! + total - before;
    before = total;
  }
}
