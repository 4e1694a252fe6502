import { type CardMap, cardPointOf, turnOf } from '../geometry/card-map.ts';
import { PICTURE_STRIDE, withGloss } from './gloss-normals.ts';
import { centreOf, type Grid } from './grid.ts';
import { LAMP_STRIDE, type Lighting, lampsAt } from './lighting.ts';
import { sdOf } from './noise.ts';
import { solutionOf } from './woodham.ts';

/** Slopes of a card's surface, block by block, with how well each is known. */
export interface Slopes {
  readonly grid: Grid;
  /** Rise a millimetre along the picture's rows, to the right. */
  readonly right: Float32Array;
  /** Rise a millimetre along the picture's columns, downwards. */
  readonly down: Float32Array;
  /** Inverse variance of both; 0 beyond the card and where nothing is known. */
  readonly weight: Float32Array;
  /** Share of light that the print throws back, colour left out. */
  readonly albedo: Float32Array;
}

/** Blocks on a tile's side, over which lamps are taken to stand alike. */
const TILE = 4;
/** Rim that is left out, mm, and the radius of a card's tips (common practice, no source). */
const RIM_MM = 0.6;
const TIP_MM = 3;

/** Slope from which the gloss of a leaning surface is told from that of the flat. */
const LEANS = 0.02;

/**
 * Slopes by photometric stereo (`woodham:1980`): least squares over the lamps for albedo and slope
 * of each block, lamps near and the gloss of the flat card taken off; where a block leans, bettered
 * with the gloss that a leaning surface has. On glossy dark print slopes may still come out too
 * steep or too flat, as its lobe is that of the whole card.
 */
export function slopesOf(
  map: CardMap,
  grid: Grid,
  lights: readonly Float32Array[],
  lighting: Lighting,
): Slopes {
  const n = grid.width * grid.height;
  const slopes: Slopes = {
    grid,
    right: new Float32Array(n),
    down: new Float32Array(n),
    weight: new Float32Array(n),
    albedo: new Float32Array(n),
  };
  const mean = meanOf(lights);
  for (let j = 0; j < grid.height; j += TILE)
    for (let i = 0; i < grid.width; i += TILE) {
      const centre = cardPointOf(map, centreOf(grid, i + (TILE - 1) / 2, j + (TILE - 1) / 2));
      if (!onCard(centre, map.sizeMm)) continue;
      const tile = tileAt(map, centre, lighting);
      for (let y = j; y < Math.min(j + TILE, grid.height - 1); y++)
        for (let x = i; x < Math.min(i + TILE, grid.width - 1); x++)
          if (x > 0 && y > 0) solve(tile, y * grid.width + x, lights, mean, lighting, slopes);
    }
  return slopes;
}

/** Whether a point lies within the card's rim and its round tips. */
export function onCard(
  [x, y]: readonly [number, number],
  [width, height]: readonly [number, number],
): boolean {
  const inX = Math.min(x, width - x);
  const inY = Math.min(y, height - y);
  if (inX < RIM_MM || inY < RIM_MM) return false;
  if (inX >= TIP_MM || inY >= TIP_MM) return true;
  return Math.hypot(TIP_MM - inX, TIP_MM - inY) < TIP_MM - RIM_MM;
}

function meanOf(lights: readonly Float32Array[]): Float32Array {
  const mean = new Float32Array((lights[0] as Float32Array).length);
  for (const light of lights)
    for (let i = 0; i < mean.length; i++)
      mean[i] = (mean[i] as number) + (light[i] as number) / lights.length;
  return mean;
}

/** What is alike over a tile: by lamp, the flat card's gloss and matt light, and the solution's three rows. */
interface Tile {
  readonly gloss: Float64Array;
  readonly matt: Float64Array;
  readonly rows: Float64Array;
  /** Variance of a slope for a relative variance of one lamp's light. */
  readonly spread: number;
  /** Design of the least squares, three columns by lamp. */
  readonly design: Float64Array;
  /** Lamps along the picture's axes. */
  readonly lamps: Float64Array;
  readonly lights: Float64Array;
}

function tileAt(map: CardMap, centre: readonly [number, number], lighting: Lighting): Tile {
  const { lamps, gloss, ambient } = lighting;
  const count = lamps.length;
  const numbers = new Float64Array(count * LAMP_STRIDE);
  const [width, height] = map.sizeMm;
  lampsAt(lamps, centre[0] - width / 2, centre[1] - height / 2, numbers);
  const [rx, ry, dx, dy] = unitTurnOf(map);
  const tile = {
    gloss: new Float64Array(count),
    matt: new Float64Array(count),
    design: new Float64Array(count * 3),
    lamps: new Float64Array(count * PICTURE_STRIDE),
    lights: new Float64Array(count),
  };
  for (let k = 0; k < count; k++) {
    const at = k * LAMP_STRIDE;
    const [lx, ly, lz, hx, hy, hz, f] = numbers.subarray(
      at,
      at + LAMP_STRIDE,
    ) as unknown as number[];
    tile.gloss[k] = (f as number) * gloss.strength * (hz as number) ** gloss.exponent;
    tile.matt[k] = (f as number) * (lz as number) * (1 + ambient.value);
    tile.lamps.set(
      [
        (lx as number) * rx + (ly as number) * ry,
        (lx as number) * dx + (ly as number) * dy,
        lz as number,
        (hx as number) * rx + (hy as number) * ry,
        (hx as number) * dx + (hy as number) * dy,
        hz as number,
        f as number,
      ],
      k * PICTURE_STRIDE,
    );
    const tan = 1 / ((lz as number) * (1 + ambient.value));
    tile.design[k * 3] = 1;
    tile.design[k * 3 + 1] = -((lx as number) * rx + (ly as number) * ry) * tan;
    tile.design[k * 3 + 2] = -((lx as number) * dx + (ly as number) * dy) * tan;
  }
  const rows = solutionOf(tile.design, count);
  let spread = 0;
  for (let i = count; i < 3 * count; i++) spread += (rows[i] as number) ** 2 / 2;
  return { ...tile, rows, spread };
}

/** Unit vectors on the card of a step right and a step down in the picture. */
function unitTurnOf(map: CardMap): readonly [number, number, number, number] {
  const [a, b, c, d] = turnOf(map);
  const right = Math.hypot(a, b);
  const down = Math.hypot(c, d);
  return [a / right, b / right, c / down, d / down];
}

function solve(
  tile: Tile,
  at: number,
  lights: readonly Float32Array[],
  mean: Float32Array,
  lighting: Lighting,
  { grid, right, down, weight, albedo }: Slopes,
): void {
  const { rows, gloss, matt, design } = tile;
  const count = lights.length;
  let a = 0;
  let r = 0;
  let d = 0;
  for (let k = 0; k < count; k++) {
    const y =
      (((lights[k] as Float32Array)[at] as number) - (gloss[k] as number)) / (matt[k] as number);
    tile.lights[k] = (lights[k] as Float32Array)[at] as number;
    a += (rows[k] as number) * y;
    r += (rows[count + k] as number) * y;
    d += (rows[2 * count + k] as number) * y;
  }
  albedo[at] = a;
  // Almost black print tells nothing: its light is gloss and noise.
  if (a < 0.01) return;
  const across = (mean[at + 1] as number) - (mean[at - 1] as number);
  const along = (mean[at + grid.width] as number) - (mean[at - grid.width] as number);
  const edge = Math.sqrt(across * across + along * along) / 2;
  const relative = (sdOf(lighting.noise, mean[at] as number, edge) / (mean[at] as number)) ** 2;
  let misfit = 0;
  for (let k = 0; k < count; k++) {
    const y =
      (((lights[k] as Float32Array)[at] as number) - (gloss[k] as number)) / (matt[k] as number);
    const off = y - a - r * (design[k * 3 + 1] as number) - d * (design[k * 3 + 2] as number);
    misfit += off * off;
  }
  const shown = relative * ((mean[at] as number) / (a * (matt[0] as number))) ** 2;
  const seen = Math.max(misfit / (a * a * Math.max(count - 3, 1)) / 4, relative);
  right[at] = clipped(r / a);
  down[at] = clipped(d / a);
  weight[at] = 1 / (Math.max(seen, shown) * tile.spread);
  if (Math.hypot(r, d) < LEANS * a) return;
  const found = { albedo: a, right: r / a, down: d / a, spread: 0 };
  withGloss(tile.lights, tile.lamps, lighting, found);
  if (found.spread === 0) return;
  albedo[at] = found.albedo;
  right[at] = clipped(found.right);
  down[at] = clipped(found.down);
}

function clipped(slope: number): number {
  return Math.min(Math.max(slope, -1.5), 1.5);
}
