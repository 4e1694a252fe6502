import type { Reduced } from './reduced.ts';

/** How steeply the colour changes at each pixel, and across which direction. */
export interface Edges {
  readonly width: number;
  readonly height: number;
  /** Change of colour per pixel across the edge (`dizenzo:1986`). */
  readonly steepness: Float32Array;
  /** Unit normals, of which the sign means nothing. */
  readonly nx: Float32Array;
  readonly ny: Float32Array;
  /** Share, 0 to 1, by which each pixel counts as an edge: half where it is `usual` steep. */
  readonly weight: Float32Array;
}

/** Steepness below which nothing stands out, however even the picture: a third of a grey level. */
const LEAST_USUAL = 0.004;

/** The usual steepness is so many times the median. Judgement, no source. */
const OVER_MEDIAN = 2.5;

/** Edges of a reduced picture by the structure tensor over its three colours. */
export function edgesOf({ width, height, colours }: Reduced): Edges {
  const n = width * height;
  const steepness = new Float32Array(n);
  const nx = new Float32Array(n);
  const ny = new Float32Array(n);
  const row = width * 3;
  const level = new Float64Array(row);
  const change = new Float64Array(row);
  for (let y = 1; y < height - 1; y++) {
    for (let k = 0, i = y * row; k < row; k++, i++) {
      const above = colours[i - row] as number;
      const below = colours[i + row] as number;
      level[k] = (3 * (above + below) + 10 * (colours[i] as number)) / 32;
      change[k] = (below - above) / 32;
    }
    for (let x = 1; x < width - 1; x++) {
      let xx = 0;
      let yy = 0;
      let xy = 0;
      for (let k = 3 * x; k < 3 * x + 3; k++) {
        const before = change[k - 3] as number;
        const after = change[k + 3] as number;
        const gx = (level[k + 3] as number) - (level[k - 3] as number);
        const gy = 3 * (before + after) + 10 * (change[k] as number);
        xx += gx * gx;
        yy += gy * gy;
        xy += gx * gy;
      }
      const half = (xx - yy) / 2;
      const spread = Math.sqrt(half * half + xy * xy);
      const i = y * width + x;
      steepness[i] = Math.sqrt((xx + yy) / 2 + spread);
      const cosine = spread > 0 ? half / spread : 1;
      nx[i] = Math.sqrt(Math.max(0, (1 + cosine) / 2));
      ny[i] = (xy < 0 ? -1 : 1) * Math.sqrt(Math.max(0, (1 - cosine) / 2));
    }
  }
  return { width, height, steepness, nx, ny, weight: weightsOf(steepness) };
}

function weightsOf(steepness: Float32Array): Float32Array {
  const usual = Math.max(LEAST_USUAL, OVER_MEDIAN * medianOf(steepness));
  const square = usual * usual;
  const weights = new Float32Array(steepness.length);
  for (let i = 0; i < weights.length; i++) {
    const s = steepness[i] as number;
    weights[i] = (s * s) / (s * s + square);
  }
  return weights;
}

/** Median of every 17th value: enough for a level of noise, and quick. */
function medianOf(values: Float32Array): number {
  const some = new Float32Array(Math.ceil(values.length / 17));
  for (let i = 0; i < some.length; i++) some[i] = values[i * 17] as number;
  some.sort();
  return some[some.length >> 1] as number;
}

/** Calls `visit` with each pixel that is the steepest across its own edge. */
export function eachRidge(edges: Edges, visit: (x: number, y: number, i: number) => void): void {
  const { width, height, steepness, nx, ny } = edges;
  for (let y = 2; y < height - 2; y++)
    for (let x = 2; x < width - 2; x++) {
      const i = y * width + x;
      const s = steepness[i] as number;
      if (s < LEAST_USUAL / 2) continue;
      const dx = Math.round(nx[i] as number) | 0;
      const dy = Math.round(ny[i] as number) | 0;
      const over = dy * width + dx;
      if (s >= (steepness[i - over] as number) && s > (steepness[i + over] as number))
        visit(x, y, i);
    }
}

/** How well an edge across (nx, ny) runs through a point: the best within one pixel, 0 to 1. */
export function supportAt(edges: Edges, x: number, y: number, nx: number, ny: number): number {
  let best = 0;
  for (let off = -1; off <= 1; off++) {
    const px = Math.round(x + off * nx) | 0;
    const py = Math.round(y + off * ny) | 0;
    if (px < 0 || py < 0 || px >= edges.width || py >= edges.height) continue;
    const i = py * edges.width + px;
    const weight = edges.weight[i] as number;
    if (weight <= best) continue;
    const along = (edges.nx[i] as number) * nx + (edges.ny[i] as number) * ny;
    const square = along * along;
    const support = weight * square * square;
    if (support > best) best = support;
  }
  return best;
}
