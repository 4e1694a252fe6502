import { carried } from '../../geometry/homography.ts';
import type { Reduced } from '../../outline/reduced.ts';
import type { Lab } from '../ciede2000.ts';
import { lightOfLab, type Three } from '../spaces.ts';
import { agreementOf, type Shown, spreadOf } from './agreement.ts';
import { type Lattice, stepAt } from './lattice.ts';

/** A chart as a grid of patches in reading order. */
export interface ChartGrid {
  readonly columns: number;
  /** Colours (Lab, D50, 2 degrees) row by row; null where a patch's colour is not known. */
  readonly labs: readonly (Lab | null)[];
  /** Width and height of the grid from the first patch's rim to the last one's; null where not told. */
  readonly sizeMm: readonly [width: number, height: number] | null;
}

type Cell = readonly [column: number, row: number];

/** A chart laid on a lattice in one turn at one offset. */
export interface Arranged {
  readonly lattice: Lattice;
  readonly mirrored: boolean;
  /** The cell of the lattice at which a column and row of the chart lies. */
  readonly cellOf: (column: number, row: number) => Cell;
  /** Logarithm of the ratio to colours that have nothing to do with the chart. */
  readonly logRatio: number;
  /** For each patch of known colour in the picture, the probability that it shows. */
  readonly shows: ReadonlyMap<number, number>;
  /** How many of them show. */
  readonly seen: number;
}

/** Least share of the smaller of lattice and chart that must lie on the other. Judgement, no source. */
const OVERLAP = 0.5;

/** The four turns of a chart on a lattice and their mirrored likes, as matrices by rows. */
const TURNS = [
  [1, 0, 0, 1],
  [0, -1, 1, 0],
  [-1, 0, 0, -1],
  [0, 1, -1, 0],
  [-1, 0, 0, 1],
  [0, 1, 1, 0],
  [1, 0, 0, -1],
  [0, -1, -1, 0],
] as const;

/** Every way in which a chart can lie on a lattice, with how well its colours agree. */
export function arrangementsOf(
  picture: Reduced,
  grid: ChartGrid,
  rows: number,
  lattice: Lattice,
): readonly Arranged[] {
  const told = grid.labs.map((lab) => lab && rootOf(lab));
  const known = told.filter((one) => one !== null);
  const spread = spreadOf(known);
  const reading = readingsOf(picture, lattice);
  const members = lattice.members.map(({ cell }) => cell);
  const handed = handOf(lattice);
  const all: Arranged[] = [];
  for (const turn of TURNS)
    for (const [dx, dy] of offsetsOf(turn, grid.columns, rows, members)) {
      const cellOf = (column: number, row: number): Cell => [
        turn[0] * column + turn[1] * row + dx,
        turn[2] * column + turn[3] * row + dy,
      ];
      const patches: number[] = [];
      const shown: Shown[] = [];
      told.forEach((one, k) => {
        const cell = cellOf(k % grid.columns, Math.floor(k / grid.columns));
        const read = one && reading(cell);
        if (!one || !read) return;
        patches.push(k);
        shown.push({ told: one, ...read });
      });
      if (shown.length < 6) continue;
      const { logRatio, shows } = agreementOf(shown, spread);
      all.push({
        ...{ lattice, cellOf },
        mirrored: turn[0] * turn[3] - turn[1] * turn[2] !== handed,
        logRatio,
        shows: new Map(patches.map((k, i) => [k, shows[i] as number])),
        seen: shows.filter((p) => p > 0.5).length,
      });
    }
  return all;
}

/** Offsets at which enough of a turned chart lies on members of the lattice. */
function offsetsOf(
  [a, b, c, d]: (typeof TURNS)[number],
  columns: number,
  rows: number,
  members: readonly Cell[],
): readonly Cell[] {
  const ends = (p: number, q: number) => {
    const all = [0, p * (columns - 1), q * (rows - 1), p * (columns - 1) + q * (rows - 1)];
    return [Math.min(...all), Math.max(...all)] as const;
  };
  const [[x0, x1], [y0, y1]] = [ends(a, b), ends(c, d)];
  const across = members.map(([x]) => x);
  const down = members.map(([, y]) => y);
  const least = OVERLAP * Math.min(members.length, columns * rows);
  const offsets: Cell[] = [];
  for (let dy = Math.min(...down) - y1; dy <= Math.max(...down) - y0; dy++)
    for (let dx = Math.min(...across) - x1; dx <= Math.max(...across) - x0; dx++) {
      const on = members.filter(
        ([x, y]) => x >= x0 + dx && x <= x1 + dx && y >= y0 + dy && y <= y1 + dy,
      ).length;
      if (on >= least) offsets.push([dx, dy]);
    }
  return offsets;
}

/** 1 where the lattice's columns and rows turn as pixels do, −1 where they turn the other way. */
function handOf({ toPicture, members }: Lattice): 1 | -1 {
  const [column, row] = (members[0] as Lattice['members'][number]).cell;
  const [x, y] = carried(toPicture, [column, row]);
  const [u, v] = carried(toPicture, [column + 1, row]);
  const [s, t] = carried(toPicture, [column, row + 1]);
  return (u - x) * (t - y) - (v - y) * (s - x) > 0 ? 1 : -1;
}

function rootOf(lab: Lab): Three {
  return lightOfLab(lab).map((light) =>
    Math.sqrt(Math.min(1, Math.max(0, light))),
  ) as unknown as Three;
}

/** What a reduced picture shows at a cell: its mean over half a patch, kept; null beyond the rim. */
function readingsOf({ width, height, colours }: Reduced, { toPicture, sideShare }: Lattice) {
  const known = new Map<string, Pick<Shown, 'seen' | 'at'> | null>();
  const half = Math.max(width, height) / 2;
  const read = (cell: Cell): Pick<Shown, 'seen' | 'at'> | null => {
    const [cx, cy] = carried(toPicture, cell);
    const reach = 0.25 * sideShare * stepAt(toPicture, cell);
    const [x0, x1] = [Math.ceil(cx - reach), Math.floor(cx + reach)];
    const [y0, y1] = [Math.ceil(cy - reach), Math.floor(cy + reach)];
    if (!(x0 >= 0 && y0 >= 0 && x1 < width && y1 < height) || x1 < x0 || y1 < y0) return null;
    const sums = [0, 0, 0];
    for (let y = y0; y <= y1; y++)
      for (let x = x0; x <= x1; x++)
        for (let c = 0; c < 3; c++)
          sums[c] = (sums[c] as number) + (colours[3 * (y * width + x) + c] as number);
    const count = (x1 - x0 + 1) * (y1 - y0 + 1);
    return {
      seen: sums.map((sum) => sum / count) as unknown as Three,
      at: [(cx - width / 2) / half, (cy - height / 2) / half],
    };
  };
  return (cell: Cell) => {
    const key = `${cell[0]} ${cell[1]}`;
    let found = known.get(key);
    if (found === undefined) {
      found = read(cell);
      known.set(key, found);
    }
    return found;
  };
}
