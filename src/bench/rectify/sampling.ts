import { type Projection, pixelOf } from '../geometry/card-map.ts';
import { rowWalkOf } from './rows.ts';
import type { View } from './view.ts';

/** Adds what a row of places in a picture shows to a row of sums, one sum or three for each place. */
export type RowSampler = (xs: Float64Array, ys: Float64Array, sums: Float32Array) => void;

/** Takes the finished sums of one row of the view, to be multiplied by `share`. */
export type RowTaker = (row: number, sums: Float32Array, share: number) => void;

/**
 * Goes through a view row by row. Where the view is coarser than the picture, each of its pixels is
 * the mean of as many samples, evenly spread over it, as it covers pixels of the picture.
 */
export function sampleRows(
  map: Projection,
  view: View,
  channels: 1 | 3,
  sample: RowSampler,
  take: RowTaker,
): void {
  const walk = rowWalkOf(map);
  const [across, down] = samplesPerPixel(map, view);
  const xs = new Float64Array(view.width);
  const ys = new Float64Array(view.width);
  const sums = new Float32Array(view.width * channels);
  const [dx, dy] = view.stepMm;
  for (let row = 0; row < view.height; row++) {
    sums.fill(0);
    for (let j = 0; j < down; j++)
      for (let i = 0; i < across; i++) {
        const x = view.originMm[0] + ((i + 0.5) / across - 0.5) * dx;
        walk(x, dx, view.originMm[1] + (row + (j + 0.5) / down - 0.5) * dy, xs, ys);
        sample(xs, ys, sums);
      }
    take(row, sums, 1 / (across * down));
  }
}

/** How many pixels of the picture one pixel of the view spans at most, across and down. */
function samplesPerPixel(map: Projection, view: View) {
  const { originMm, stepMm, width, height } = view;
  let [across, down] = [1, 1];
  for (const fx of [0, 1])
    for (const fy of [0, 1]) {
      const x = originMm[0] + fx * (width - 1) * stepMm[0];
      const y = originMm[1] + fy * (height - 1) * stepMm[1];
      const [u, v] = pixelOf(map, [x, y]);
      const [ux, vx] = pixelOf(map, [x + stepMm[0], y]);
      const [uy, vy] = pixelOf(map, [x, y + stepMm[1]]);
      across = Math.max(across, Math.hypot(ux - u, vx - v));
      down = Math.max(down, Math.hypot(uy - u, vy - v));
    }
  const [most, mostDown] = view.most ?? [Infinity, Infinity];
  return [
    Math.min(most, Math.ceil(across - 0.2)),
    Math.min(mostDown, Math.ceil(down - 0.2)),
  ] as const;
}
