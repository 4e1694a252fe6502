import type { Point } from './canvas.ts';
import type { Crease, Dent, Marks, Scratch } from './defects.ts';

/** Slopes of a card's surface, on a grid. */
export interface Relief {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly margin: number;
  /** Rise to the right and rise downwards, two to a texel, in mm a mm. */
  readonly slopes: Float32Array;
}

const MARGIN = 1;

/** The slopes that dents, scratches and creases give a card; null where there are none. */
export function reliefOf(marks: Marks, [w, h]: Point, scale: number): Relief | null {
  const { dents, scratches, creases } = marks;
  if (dents.length + scratches.length + creases.length === 0) return null;
  const width = Math.ceil((w + 2 * MARGIN) * scale);
  const height = Math.ceil((h + 2 * MARGIN) * scale);
  const heights = new Float32Array(width * height);
  const grid = { width, height, scale, heights };
  for (const dent of dents) press(grid, dent);
  for (const scratch of scratches) groove(grid, scratch);
  for (const crease of creases) ridge(grid, crease);
  return { width, height, scale, margin: MARGIN, slopes: slopesOf(grid) };
}

/**
 * Depth of a dent at a distance from its centre, as a share of its depth, with half its width at
 * half depth as unit: cosine (1 + cos(πr/2))/2 to r = 2; Gaussian 2^(−r²); cap: of a sphere,
 * 1 − r²/2 to its rim at √2.
 */
export function depthAt(profile: Dent['profile'], r: number): number {
  if (profile === 'gaussian') return 2 ** -(r * r);
  if (profile === 'cap') return Math.max(0, 1 - (r * r) / 2);
  return r < 2 ? (1 + Math.cos((Math.PI * r) / 2)) / 2 : 0;
}

interface Grid {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  readonly heights: Float32Array;
}

function each(
  grid: Grid,
  box: readonly [number, number, number, number],
  rise: (x: number, y: number) => number,
): void {
  const { width, height, scale, heights } = grid;
  const at = (mm: number) => Math.round((mm + MARGIN) * scale);
  for (let j = Math.max(0, at(box[1])); j < Math.min(height, at(box[3])); j++)
    for (let i = Math.max(0, at(box[0])); i < Math.min(width, at(box[2])); i++) {
      const k = j * width + i;
      heights[k] = heights[k]! + rise((i + 0.5) / scale - MARGIN, (j + 0.5) / scale - MARGIN);
    }
}

function press(grid: Grid, dent: Dent): void {
  const [x, y] = dent.centreMm;
  const half = dent.diameterMm / 2;
  const stretch = dent.profile === 'elliptic' ? (dent.stretch ?? 1.6) : 1;
  const t = ((dent.turnDeg ?? 0) * Math.PI) / 180;
  const reach = half * 3.4 * stretch;
  each(grid, [x - reach, y - reach, x + reach, y + reach], (px, py) => {
    const [dx, dy] = [px - x, py - y];
    // Along and across keep the area, so that the width is the geometric mean.
    const u = (dx * Math.cos(t) + dy * Math.sin(t)) / Math.sqrt(stretch);
    const v = (-dx * Math.sin(t) + dy * Math.cos(t)) * Math.sqrt(stretch);
    return -dent.depthMm * depthAt(dent.profile, Math.hypot(u, v) / half);
  });
}

function groove(grid: Grid, { polylineMm, widthMm, depthMm }: Scratch): void {
  const reach = widthMm * 2.5;
  each(grid, boxOf(polylineMm, reach), (x, y) => {
    const [d, along] = toLine(polylineMm, x, y);
    if (d > reach) return 0;
    const fade = Math.min(1, along * 8, (1 - along) * 8);
    const u = d / (widthMm / 2);
    const burr = 0.35 * Math.exp(-(((u - 1.7) / 0.45) ** 2));
    return depthMm * fade * (burr - Math.max(0, 1 - u * u));
  });
}

function ridge(grid: Grid, { polylineMm, widthMm, heightMm }: Crease): void {
  const reach = widthMm * 2;
  each(grid, boxOf(polylineMm, reach), (x, y) => {
    const [d] = toLine(polylineMm, x, y);
    return heightMm * Math.exp(-((d / (widthMm / 2)) ** 2));
  });
}

function slopesOf({ width, height, scale, heights }: Grid): Float32Array {
  const slopes = new Float32Array(2 * width * height);
  for (let j = 1; j < height - 1; j++)
    for (let i = 1; i < width - 1; i++) {
      const k = j * width + i;
      slopes[2 * k] = (heights[k + 1]! - heights[k - 1]!) * (scale / 2);
      slopes[2 * k + 1] = (heights[k + width]! - heights[k - width]!) * (scale / 2);
    }
  return slopes;
}

/** Left, top, right and bottom of a line, and so much around it. */
export function boxOf(line: readonly Point[], around: number): [number, number, number, number] {
  const xs = line.map(([x]) => x);
  const ys = line.map(([, y]) => y);
  return [
    Math.min(...xs) - around,
    Math.min(...ys) - around,
    Math.max(...xs) + around,
    Math.max(...ys) + around,
  ];
}

/** Distance of a point to a line, and how far along it, 0 to 1. */
export function toLine(line: readonly Point[], x: number, y: number): readonly [number, number] {
  let [best, along] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i + 1 < line.length; i++) {
    const [ax, ay] = line[i]!;
    const [dx, dy] = [line[i + 1]![0] - ax, line[i + 1]![1] - ay];
    const t = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
    const d = Math.hypot(x - ax - t * dx, y - ay - t * dy);
    if (d < best) [best, along] = [d, (i + t) / (line.length - 1)];
  }
  return [best, along];
}
