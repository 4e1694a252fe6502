import { type CardMap, cardPointOf } from '../geometry/card-map.ts';
import { centreOf, type Grid } from './grid.ts';
import { onCard } from './slopes.ts';
import type { LampUsed } from './types.ts';

/** A picture's light on the card and the lamp that is said to have given it. */
export interface Lit {
  readonly name: string;
  readonly light: Float32Array;
  readonly lamp: LampUsed;
}

/** Side of the tiles over which light is compared, mm. */
const TILE_MM = 3;
/**
 * Spread of the ratio of light over the card, from tile to tile, under which two pictures are lit
 * alike: a lamp half a metre away that moves by a degree spreads it by more (Judgement, no source).
 */
const ALIKE = 0.004;
/** Lamps beyond this light a card evenly wherever they stand, mm. */
const FAR_MM = 2000;

/**
 * Pictures that were lit alike but for noise and exposure, so that the lamp cannot have moved between
 * them: which to leave out, by number, and in words. Of two whose lamps were given apart neither is
 * believed. Lamps beyond two metres cannot be told this way, and nothing is said of them.
 */
export function alikeLamps(
  lit: readonly Lit[],
  map: CardMap,
  grid: Grid,
): { readonly left: ReadonlySet<number>; readonly words: readonly string[] } {
  const left = new Set<number>();
  const alike = new Map<number, string[]>();
  const tiles = lit.map(({ light }) => tilesOf(light, map, grid));
  for (let b = 1; b < lit.length; b++)
    for (let a = 0; a < b; a++) {
      const [one, other] = [lit[a], lit[b]] as [Lit, Lit];
      if (left.has(b) || far(one.lamp, other.lamp)) continue;
      if (spreadOf(tiles[a] as Float64Array, tiles[b] as Float64Array) > ALIKE) continue;
      left.add(b);
      if (saidApart(one.lamp, other.lamp)) left.add(a);
      alike.set(a, [...(alike.get(a) ?? [one.name]), other.name]);
    }
  return { left, words: [...alike.values()].map(wordsOf) };
}

function wordsOf(names: readonly string[]): string {
  const all = `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  const again = names.length === 2 ? 'one of them' : 'all but one of them';
  return `${all} are lit alike but for noise: the lamp did not move between them. Photograph ${again} again with the lamp elsewhere.`;
}

function far({ placeMm: a }: LampUsed, { placeMm: b }: LampUsed): boolean {
  return Math.min(Math.hypot(...a), Math.hypot(...b)) > FAR_MM;
}

function saidApart({ placeMm: a, from }: LampUsed, { placeMm: b }: LampUsed): boolean {
  return from === 'given' && Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) > 20;
}

/** Mean light of each tile that lies on the card. */
function tilesOf(light: Float32Array, map: CardMap, grid: Grid): Float64Array {
  const side = Math.max(1, Math.round(TILE_MM * grid.perMm));
  const across = Math.ceil(grid.width / side);
  const sums = new Float64Array(across * Math.ceil(grid.height / side));
  for (let y = 0; y < grid.height; y++)
    for (let x = 0; x < grid.width; x++) {
      if (!onCard(cardPointOf(map, centreOf(grid, x, y)), map.sizeMm)) continue;
      const tile = Math.floor(y / side) * across + Math.floor(x / side);
      sums[tile] = (sums[tile] as number) + (light[y * grid.width + x] as number);
    }
  return sums;
}

/** Standard deviation of the logarithm of the ratio, each tile weighed by its light. */
function spreadOf(a: Float64Array, b: Float64Array): number {
  let [weight, sum, squares] = [0, 0, 0];
  for (let i = 0; i < a.length; i++) {
    const both = Math.min(a[i] as number, b[i] as number);
    if (!(both > 0)) continue;
    const ratio = Math.log((a[i] as number) / (b[i] as number));
    weight += both;
    sum += both * ratio;
    squares += both * ratio * ratio;
  }
  return Math.sqrt(Math.max(0, squares / weight - (sum / weight) ** 2));
}
