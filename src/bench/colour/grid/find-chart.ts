import { carried, type Homography } from '../../geometry/homography.ts';
import type { Corners } from '../../geometry/points.ts';
import { type Reduced, reducedOf } from '../../outline/reduced.ts';
import type { Picture } from '../../picture.ts';
import type { Patch } from '../chart.ts';
import { type Arranged, arrangementsOf, type ChartGrid } from './arrangements.ts';
import { latticesOf, stepAt } from './lattice.ts';
import { evenPlaces } from './patches.ts';

/** A chart found in a picture. */
export interface ChartFound {
  /** In the order of the grid, also where a patch is covered or beyond the rim. */
  readonly patches: readonly Patch[];
  /** The corners of the grid, as the chart is read. */
  readonly outline: Corners;
  /** Root mean square distance of a patch seen from where the grid has it, pixels. */
  readonly residualPx: number;
  /** Pixels a millimetre over the chart, by its area; null where its size was not told. */
  readonly pxPerMm: number | null;
  /** That the patches are where they are said to be, against every other turn and place. */
  readonly p: number;
  /** Patches that show another colour than the chart's beside all others. */
  readonly covered: readonly number[];
}

/** Why a chart was not found, with what to photograph again. */
export interface ChartNotFound {
  readonly why: string;
}

/** What of a patch's side is taken to be patch, since its rim is blurred. */
const SAFE = 0.8;

/** Less probable ways to lie are not given: two alike share 0.5 each. Judgement, no source. */
const SURE = 0.6;

/** Patches of known colour that must be seen before a chart is looked for. Judgement, no source. */
const FEWEST = 10;

/**
 * Finds a chart's grid of patches in a picture: places of one colour on a lattice seen in perspective,
 * laid on the chart in each of four turns and at every offset, as its colours agree best under some
 * camera and lamp. A mirrored picture is refused. Needs two rows and two columns of patches with a
 * rim that shows; a chart whose colours look alike when turned may be found turned, and `p` says so.
 *
 * @throws RangeError where the grid is not at least two columns and two full rows
 */
export function findChart(picture: Picture, grid: ChartGrid): ChartFound | ChartNotFound {
  const rows = Math.ceil(grid.labs.length / grid.columns);
  if (!Number.isInteger(grid.columns) || grid.columns < 2 || rows < 2)
    throw new RangeError(
      `A chart has two rows and columns at least, found ${rows} × ${grid.columns}.`,
    );
  const reduced = reducedOf(picture);
  const lattices = latticesOf(evenPlaces(reduced));
  if (lattices.length === 0) return { why: `No grid of patches shows. ${AGAIN}` };
  const all = lattices.flatMap((lattice) => arrangementsOf(reduced, grid, rows, lattice));
  const best = all.reduce<Arranged | null>((a, b) => (a && a.logRatio >= b.logRatio ? a : b), null);
  const p = best ? Math.exp(best.logRatio - logSum([0, ...all.map((one) => one.logRatio)])) : 0;
  if (!best || p < SURE) return { why: `${misfitWords(best, all)} ${AGAIN}` };
  if (best.mirrored)
    return { why: 'The chart is seen mirrored: use the picture as the camera took it.' };
  if (best.seen < FEWEST)
    return {
      why: `Only ${best.seen} patches of known colour are seen and ${FEWEST} are needed. ${AGAIN}`,
    };
  return foundAs(best, grid, rows, reduced, p);
}

const AGAIN =
  'Photograph the whole chart, flat and sharp, uncovered and evenly lit, larger in the picture.';

function misfitWords(best: Arranged | null, all: readonly Arranged[]): string {
  if (!best || best.logRatio < 0) return 'A grid shows, but its colours are not the chart’s.';
  const others = all.filter((one) => one.logRatio > best.logRatio - 3).length;
  return others > 1
    ? 'A grid shows, but its colours fit the chart in more than one way.'
    : 'A grid shows, but too few of its colours fit the chart.';
}

function foundAs(
  { lattice, cellOf, shows }: Arranged,
  grid: ChartGrid,
  rows: number,
  { factor }: Reduced,
  p: number,
): ChartFound {
  const inPicture = ([x, y]: readonly [number, number]): readonly [number, number] => [
    (x + 0.5) * factor - 0.5,
    (y + 0.5) * factor - 0.5,
  ];
  const map: Homography = lattice.toPicture;
  const at = (column: number, row: number) => inPicture(carried(map, cellOf(column, row)));
  const half = lattice.sideShare / 2;
  const outline: Corners = [
    at(-half, -half),
    at(grid.columns - 1 + half, -half),
    at(grid.columns - 1 + half, rows - 1 + half),
    at(-half, rows - 1 + half),
  ];
  return {
    patches: grid.labs.map((lab, k): Patch => {
      const cell = cellOf(k % grid.columns, Math.floor(k / grid.columns));
      const sizePx = SAFE * lattice.sideShare * stepAt(map, cell) * factor;
      return { lab, centrePx: inPicture(carried(map, cell)), sizePx };
    }),
    outline,
    residualPx: lattice.residual * factor,
    pxPerMm: grid.sizeMm && Math.sqrt(areaOf(outline) / (grid.sizeMm[0] * grid.sizeMm[1])),
    p,
    covered: grid.labs.flatMap((lab, k) => (lab && (shows.get(k) ?? 1) < 0.1 ? [k] : [])),
  };
}

/** Area of a quadrilateral in square pixels, half the product of its diagonals across each other. */
function areaOf([[ax, ay], [bx, by], [cx, cy], [dx, dy]]: Corners): number {
  return Math.abs((cx - ax) * (dy - by) - (cy - ay) * (dx - bx)) / 2;
}

function logSum(logs: readonly number[]): number {
  const most = Math.max(...logs);
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0));
}
