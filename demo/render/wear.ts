import type { Canvas, Point } from './canvas.ts';
import type { Crease, Marks, Silvering, Wear } from './defects.ts';
import { hashed, layered } from './noise.ts';
import { boxOf, toLine } from './relief.ts';
import { roundedDistance } from './shapes.ts';

/** Whitened places as drawn: a mask over the card, and the truth of each place. */
export interface Whitened {
  readonly mask: Uint8Array;
  readonly maskWidth: number;
  readonly maskHeight: number;
  readonly places: readonly Place[];
  /** The same of each place that is silvered. */
  readonly silvered: readonly Place[];
}

interface Place {
  readonly areaMm2: number;
  readonly bboxMm: readonly [number, number, number, number];
  readonly centroidMm: Point;
}

/** Pixels of a mask to the millimetre. */
export const MASK_SCALE = 20;

/** Draws whitening into a painted face, where there is one, and tells where it lies. */
export function whiten(
  canvas: Canvas | null,
  marks: Pick<Marks, 'wear' | 'silvering' | 'creases'>,
  size: Point,
  radius: number,
): Whitened {
  const maskWidth = Math.round(size[0] * MASK_SCALE);
  const maskHeight = Math.round(size[1] * MASK_SCALE);
  const mask = new Uint8Array(maskWidth * maskHeight);
  const places = marks.wear.map((wear) => {
    const at = depthOf(wear, size, radius);
    if (canvas) paint(canvas, boxOfWear(wear, size), at, wear);
    return measured(boxOfWear(wear, size), at, size, radius, mask, maskWidth);
  });
  const silvered = marks.silvering.map((one) => {
    const at = bareOf(one);
    if (canvas) paintBare(canvas, boxOfBare(one), at, one);
    return measured(boxOfBare(one), at, size, radius, mask, maskWidth);
  });
  if (canvas) for (const crease of marks.creases) paintCrease(canvas, crease);
  return { mask, maskWidth, maskHeight, places, silvered };
}

type Box = readonly [number, number, number, number];
/** Above 0 where the print is gone, by so many millimetres. */
type Depth = (x: number, y: number) => number;

function depthOf(wear: Wear, [w, h]: Point, radius: number): Depth {
  const rough = (x: number, y: number) => layered(x * 3, y * 3, wear.seed, 4) - 0.5;
  if (wear.type === 'corner') {
    const [cx, cy] = [wear.at === 1 || wear.at === 2 ? w : 0, wear.at > 1 ? h : 0];
    return (x, y) => {
      const far = Math.hypot(x - cx, y - cy);
      const rim = -roundedDistance(x, y, w, h, radius);
      const reach = wear.reachMm * Math.max(0, 1 - far / (radius + wear.reachMm * 2.4));
      return reach * (1 + 1.1 * rough(x, y)) - rim;
    };
  }
  const flat = wear.side === 'top' || wear.side === 'bottom';
  const length = wear.toMm - wear.fromMm;
  return (x, y) => {
    const rim = { left: x, right: w - x, top: y, bottom: h - y }[wear.side];
    const t = ((flat ? x : y) - wear.fromMm) / length;
    if (t <= 0 || t >= 1) return -1;
    return wear.depthMm * Math.min(1, 6 * t, 6 - 6 * t) * (0.75 + 1.3 * rough(x, y)) - rim;
  };
}

function boxOfWear(wear: Wear, [w, h]: Point): Box {
  if (wear.type === 'corner') {
    const r = 4 + 3 * wear.reachMm;
    const right = wear.at === 1 || wear.at === 2;
    return [right ? w - r : 0, wear.at > 1 ? h - r : 0, right ? w : r, wear.at > 1 ? h : r];
  }
  const d = 2 * wear.depthMm;
  const { fromMm: a, toMm: b } = wear;
  return {
    left: [0, a, d, b] as const,
    right: [w - d, a, w, b] as const,
    top: [a, 0, b, d] as const,
    bottom: [a, h - d, b, h] as const,
  }[wear.side];
}

function paint(canvas: Canvas, box: Box, depth: Depth, { seed, ink }: Wear): void {
  const [red, green, blue] = ink ?? [1, 0.97, 0.9];
  each(canvas, [box[0] - 1, box[1] - 1, box[2] + 1, box[3] + 1], (x, y) => {
    const gone = Math.max(0, Math.min(1, 0.5 + depth(x, y) * 14));
    const grain = layered(x * 9, y * 9, seed + 7, 3);
    // Ink sinks unevenly into bare fibres.
    const fibre = ink ? 0.75 + 0.5 * grain : 0.72 + 0.16 * grain;
    return [gone, fibre * red, fibre * green, fibre * blue];
  });
}

/** Specks where layered noise lies above what leaves so much of the middle bare, fewer outwards. */
function bareOf({ centreMm: [cx, cy], halfMm: [a, b], grainMm, cover, seed }: Silvering): Depth {
  // Noise of three octaves lies about one half with a spread of about a seventh.
  const least = 0.5 + 0.15 * (1 - 2 * cover) * 1.6;
  return (x, y) => {
    const far = Math.hypot((x - cx) / a, (y - cy) / b);
    if (far >= 1) return -1;
    const noise = layered(x / grainMm / 2, y / grainMm / 2, seed, 3);
    return 2 * grainMm * (noise - least - 0.35 * far ** 4);
  };
}

function boxOfBare({ centreMm: [x, y], halfMm: [a, b] }: Silvering): Box {
  return [x - a, y - b, x + a, y + b];
}

function paintBare(canvas: Canvas, box: Box, depth: Depth, { bare, seed }: Silvering): void {
  each(canvas, box, (x, y) => {
    const gone = Math.max(0, Math.min(1, 0.5 + depth(x, y) * 14));
    const light = bare * (0.85 + 0.3 * layered(x * 6, y * 6, seed + 3, 2));
    return [gone, light, light * 1.01, light * 1.03];
  });
}

function paintCrease(canvas: Canvas, { polylineMm, widthMm }: Crease): void {
  each(canvas, boxOf(polylineMm, widthMm), (x, y) => {
    const [d] = toLine(polylineMm, x, y);
    const broken = 0.55 + 0.9 * (layered(x * 6, y * 6, 77, 3) - 0.5);
    const gone = broken * Math.exp(-((d / (widthMm * 0.25)) ** 2));
    return [gone, 0.7, 0.68, 0.62];
  });
}

function each(
  { width, height, scale, margin, values }: Canvas,
  box: Box,
  over: (x: number, y: number) => readonly [number, number, number, number],
): void {
  const at = (mm: number) => Math.round((mm + margin) * scale);
  for (let j = Math.max(0, at(box[1])); j < Math.min(height, at(box[3])); j++)
    for (let i = Math.max(0, at(box[0])); i < Math.min(width, at(box[2])); i++) {
      const k = 4 * (j * width + i);
      const [a, r, g, b] = over((i + 0.5) / scale - margin, (j + 0.5) / scale - margin);
      values[k] = values[k]! + (r - values[k]!) * a;
      values[k + 1] = values[k + 1]! + (g - values[k + 1]!) * a;
      values[k + 2] = values[k + 2]! + (b - values[k + 2]!) * a;
      values[k + 3] = values[k + 3]! * (1 - a);
    }
}

function measured(
  box: Box,
  depth: Depth,
  [w, h]: Point,
  radius: number,
  mask: Uint8Array,
  maskWidth: number,
): Place {
  const s = MASK_SCALE;
  let [n, sx, sy, x0, y0, x1, y1] = [0, 0, 0, w, h, 0, 0];
  const from = (mm: number) => Math.max(0, Math.floor(mm * s));
  for (let j = from(box[1]); j < Math.min(h * s, box[3] * s); j++)
    for (let i = from(box[0]); i < Math.min(w * s, box[2] * s); i++) {
      const [x, y] = [(i + 0.5) / s, (j + 0.5) / s];
      if (roundedDistance(x, y, w, h, radius) > 0 || depth(x, y) <= 0) continue;
      mask[j * maskWidth + i] = 255;
      n++;
      sx += x;
      sy += y;
      [x0, y0] = [Math.min(x0, i / s), Math.min(y0, j / s)];
      [x1, y1] = [Math.max(x1, (i + 1) / s), Math.max(y1, (j + 1) / s)];
    }
  const centroid: Point = n > 0 ? [sx / n, sy / n] : [(box[0] + box[2]) / 2, (box[1] + box[3]) / 2];
  return { areaMm2: n / (s * s), bboxMm: [x0, y0, x1, y1], centroidMm: centroid };
}

/** Dust on a scanner's glass as light specks and short hairs, by a seed; 0 where there is none. */
export function dustAt(x: number, y: number, seed: number, share: number): number {
  const i = Math.floor(x / 3);
  const j = Math.floor(y / 3);
  if (hashed(i, j, seed) > share) return 0;
  const [u, v] = [
    x - 3 * i - 0.6 - 1.8 * hashed(i, j, seed + 1),
    y - 3 * j - 0.6 - 1.8 * hashed(i, j, seed + 2),
  ];
  const r = 0.04 + 0.1 * hashed(i, j, seed + 3);
  return Math.max(0, Math.min(1, (r - Math.hypot(u, v)) / 0.03));
}
