import type { BorderStrip } from './border-strip.ts';
import type { Usual } from './whiteness.ts';

/** A connected place that is whiter than its border, as cells of the strip. */
export interface WornPlace {
  /** Indices into the strip's planes, `column * rows + row`. */
  readonly cells: readonly number[];
  /** First column, and how many columns on the place ends, counted on over the strip's end. */
  readonly first: number;
  readonly last: number;
}

/** Whiteness over what is usual along the side, and one standard deviation of it, by cell. */
export interface Excess {
  readonly share: Float32Array;
  readonly sd: Float32Array;
}

const LEAST = { share: 0.25, sds: 5 };
const EDGE_SHARE = 0.15;
const EDGE_SDS = 3;
const TOUCH_MM = 0.2;

/** Takes away what is usual; at a tip, the larger of what is usual along its two sides. */
export function excessOf(strip: BorderStrip, share: Float32Array, usual: readonly Usual[]): Excess {
  const excess = new Float32Array(share.length);
  const sd = new Float32Array(share.length);
  strip.rays.forEach(({ part }, column) => {
    const one = usual[part >> 1] as Usual;
    const two = part % 2 === 0 ? one : (usual[((part >> 1) + 1) % 4] as Usual);
    for (let row = 0, i = column * strip.rows; row < strip.rows; row++, i++) {
      const level = Math.max(one.level[row] as number, two.level[row] as number, 0);
      excess[i] = (share[i] as number) - level;
      sd[i] = Math.max(one.sd[row] as number, two.sd[row] as number);
    }
  });
  return { share: excess, sd };
}

/** The connected places of the border that touch the cut edge and are whiter than chance has it. */
export function wornPlacesOf(
  strip: BorderStrip,
  excess: Excess,
  borderRows: Int32Array,
): readonly WornPlace[] {
  const { rows, rays, firstMm, stepMm } = strip;
  const open = new Uint8Array(rays.length * rows);
  const edgeRow = Math.round(-firstMm / stepMm);
  const touchRow = Math.round((TOUCH_MM - firstMm) / stepMm);
  for (let column = 0; column < rays.length; column++)
    for (let row = edgeRow; row < (borderRows[column] as number); row++)
      if (exceeds(excess, column * rows + row, EDGE_SHARE, EDGE_SDS)) open[column * rows + row] = 1;
  const places: WornPlace[] = [];
  for (let column = 0; column < rays.length; column++)
    for (let row = edgeRow; row <= touchRow; row++) {
      if (open[column * rows + row] === 0) continue;
      const place = flood(strip, open, column, row);
      if (place.cells.some((cell) => exceeds(excess, cell, LEAST.share, LEAST.sds)))
        places.push(place);
    }
  return places;
}

function exceeds({ share, sd }: Excess, cell: number, least: number, sds: number): boolean {
  const value = share[cell] as number;
  return value > least && value > sds * (sd[cell] as number);
}

/** All open cells connected with one, closed as they are taken. */
function flood(
  { rows, rays }: BorderStrip,
  open: Uint8Array,
  column: number,
  row: number,
): WornPlace {
  const cells: number[] = [];
  const count = rays.length;
  const stack: [number, number][] = [[column, row]];
  let [first, last] = [column, column];
  open[column * rows + row] = 0;
  for (let at = stack.pop(); at; at = stack.pop()) {
    const [x, y] = at;
    cells.push((((x % count) + count) % count) * rows + y);
    first = Math.min(first, x);
    last = Math.max(last, x);
    for (const [dx, dy] of [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ] as const) {
      if (y + dy < 0 || y + dy >= rows) continue;
      const cell = ((((x + dx) % count) + count) % count) * rows + y + dy;
      if (open[cell] === 0) continue;
      open[cell] = 0;
      stack.push([x + dx, y + dy]);
    }
  }
  return { cells, first, last };
}
