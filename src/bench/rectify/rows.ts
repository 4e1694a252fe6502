import type { Projection } from '../geometry/card-map.ts';
import { bowed, type Lens } from '../geometry/lens.ts';

/** Fills `xs` and `ys` with the pixels at which the points x0, x0 + dx, … at height y are seen. */
export type RowWalk = (
  x0: number,
  dx: number,
  y: number,
  xs: Float64Array,
  ys: Float64Array,
) => void;

const ENTRIES = 1024;
const REACH = 4;

/**
 * Walks along rows of the card as `pixelOf` does for one point, the bow of the lens looked up by the
 * squared radius: for |k1| up to 0.1 within 1e-3 pixels of it in a picture of 3,000 pixels.
 */
export function rowWalkOf(map: Projection): RowWalk {
  const [a, b, c, d, e, f, g, h, i] = map.toStraight;
  const { width, height } = map.lens;
  const [cx, cy, unit] = [(width - 1) / 2, (height - 1) / 2, Math.hypot(width, height) / 2];
  const bow = bowTableOf(map.lens);
  const perEntry = ENTRIES / REACH / (unit * unit);
  return (x0, dx, y, xs, ys) => {
    for (let k = 0; k < xs.length; k++) {
      const x = x0 + k * dx;
      const w = 1 / (g * x + h * y + i);
      const u = (a * x + b * y + c) * w - cx;
      const v = (d * x + e * y + f) * w - cy;
      const at = Math.min((u * u + v * v) * perEntry, ENTRIES - 1);
      const entry = at | 0;
      const low = bow[entry] as number;
      const shrink = low + ((bow[entry + 1] as number) - low) * (at - entry);
      xs[k] = cx + u * shrink;
      ys[k] = cy + v * shrink;
    }
  };
}

const tables = new WeakMap<Lens, Float64Array>();

/** Seen over ideal radius, by the squared ideal radius from 0 to `REACH` half diagonals. */
function bowTableOf(lens: Lens): Float64Array {
  const known = tables.get(lens);
  if (known) return known;
  const [cx, cy] = [(lens.width - 1) / 2, (lens.height - 1) / 2];
  const unit = Math.hypot(lens.width, lens.height) / 2;
  const table = Float64Array.from({ length: ENTRIES + 1 }, (_, entry) => {
    const ideal = Math.sqrt((Math.max(entry, 1e-6) * REACH) / ENTRIES) * unit;
    return (bowed(lens, [cx + ideal, cy])[0] - cx) / ideal;
  });
  tables.set(lens, table);
  return table;
}
