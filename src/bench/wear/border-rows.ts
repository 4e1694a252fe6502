import { quantileOf } from '../../maths/index.ts';
import type { BySide } from '../frame/sides.ts';
import type { CardMap } from '../geometry/card-map.ts';
import type { BorderStrip } from './border-strip.ts';

const FROM_MM = 0.5;
const MARGIN_MM = 0.15;

/** Share of a side's columns that have left the border's colour where it ends: without a frame, art may begin anywhere. */
const [LEFT_BY_FRAME, LEFT_BY_ART] = [0.5, 0.125];

/**
 * How many rows of each column belong to the border, before frame or art begin: beside a side the
 * depth at which half of its columns have left the border's colour (an eighth where no frame is
 * known), and no deeper than its frame; at a tip where its ray enters the frame that the two sides span.
 *
 * @param away how far each place of the strip is from the border's colour
 * @param limit how far counts as having left it
 * @param borders least depth of the frame along each side, mm; null where none was found
 */
export function borderRowsOf(
  strip: BorderStrip,
  { sizeMm: [width, height] }: Pick<CardMap, 'sizeMm'>,
  away: Float32Array,
  limit: number,
  borders: BySide<number> | null,
): Int32Array {
  const depthAt = (part: number, side: keyof BySide<number>) =>
    Math.min(
      depthOf(strip, away, limit, part, borders ? LEFT_BY_FRAME : LEFT_BY_ART),
      borders?.[side] ?? Number.POSITIVE_INFINITY,
    ) - MARGIN_MM;
  const [top, right] = [depthAt(0, 'top'), depthAt(2, 'right')];
  const [bottom, left] = [depthAt(4, 'bottom'), depthAt(6, 'left')];
  return Int32Array.from(strip.rays, ({ part, x, y, inX, inY }) => {
    const across = inX > 0 ? (left - x) / inX : (width - right - x) / inX;
    const down = inY > 0 ? (top - y) / inY : (height - bottom - y) / inY;
    const depth =
      part % 2 === 0
        ? ([top, right, bottom, left][part / 2] as number)
        : Math.max(Math.abs(inX) > 1e-6 ? across : 0, Math.abs(inY) > 1e-6 ? down : 0);
    const rows = Math.floor((depth - strip.firstMm) / strip.stepMm);
    return Math.max(0, Math.min(strip.rows, rows));
  });
}

function depthOf(
  { rays, rows, firstMm, stepMm }: BorderStrip,
  away: Float32Array,
  limit: number,
  part: number,
  left: number,
): number {
  const deepest = firstMm + rows * stepMm;
  const depths: number[] = [];
  rays.forEach((ray, column) => {
    if (ray.part !== part) return;
    const from = Math.round((FROM_MM - firstMm) / stepMm);
    if ((away[column * rows + from] as number) > limit) return;
    let row = from;
    while (row < rows && !((away[column * rows + row] as number) > limit)) row++;
    depths.push(firstMm + row * stepMm);
  });
  return depths.length > 0 ? quantileOf(depths, left) : deepest;
}
