import { quantileOf } from '../../maths/index.ts';
import type { BorderStrip } from './border-strip.ts';
import type { Whiteness } from './whiteness.ts';
import type { Excess, WornPlace } from './worn-places.ts';

/** What tells worn card from art, dirt, a finger or a wrong outline, for one place. */
export interface PlaceFeatures {
  /** Three quarters up the place's excess of whiteness. */
  readonly plateau: number;
  /** Plateau over one standard deviation of the unworn border. */
  readonly firmness: number;
  /** Change of colour that white does not explain, as a share of the plateau. */
  readonly tint: number;
  /** Mean of the card's unrest and of that around the place, the place itself left out. */
  readonly unrest: number;
  /** 1 where the place's colour goes on outside the card, unlike the ground beside it, else 0 or between. */
  readonly overlap: number;
  /** Depth that nine tenths of the place's cells do not pass, mm. */
  readonly depthMm: number;
  /** Share of the border's depth that the place fills. */
  readonly fills: number;
}

const AROUND_MM = 15;
/** Millimetres from column to column, near enough. */
const ALONG_MM = 0.1;
const UNREST_FROM_MM = 0.6;

/** The unrolled border and what has been made of it. */
export interface Seen {
  readonly strip: BorderStrip;
  readonly whiteness: Whiteness;
  readonly excess: Excess;
  readonly borderRows: Int32Array;
  /** How far each place is from the border's colour, and how far counts as being of another. */
  readonly away: Float32Array;
  readonly limit: number;
  /** Of the whole border, as `unrestOf` gives it. */
  readonly cardUnrest: number;
}

/** Share of the whole border whose colour is not the border's: near 0 for one plain colour. */
export function unrestOf(seen: Omit<Seen, 'cardUnrest' | 'whiteness' | 'excess'>): number {
  return unrestBetween(seen, [0, seen.strip.rays.length - 1], new Set());
}

/** Features of a place. */
export function featuresOf(seen: Seen, place: WornPlace): PlaceFeatures {
  const { strip, whiteness, excess, borderRows, cardUnrest } = seen;
  const { rows, firstMm, stepMm } = strip;
  const reach = Math.round(AROUND_MM / ALONG_MM);
  const near = [place.first - reach, place.last + reach] as const;
  const plateau = quantileOf(
    place.cells.map((cell) => excess.share[cell] as number),
    0.75,
  );
  const sd = quantileOf(
    place.cells.map((cell) => excess.sd[cell] as number),
    0.5,
  );
  const tint = quantileOf(
    place.cells.map((cell) => whiteness.rest[cell] as number),
    0.5,
  );
  const depths = place.cells.map((cell) => firstMm + (cell % rows) * stepMm);
  const depthMm = quantileOf(depths, 0.9);
  const deepest = quantileOf(
    place.cells.map((cell) => firstMm + (borderRows[Math.floor(cell / rows)] as number) * stepMm),
    0.5,
  );
  return {
    plateau,
    firmness: plateau / Math.max(sd, 0.002),
    tint: tint / plateau,
    unrest: (unrestBetween(seen, near, new Set(place.cells)) + cardUnrest) / 2,
    overlap: overlapOf(strip, place),
    depthMm,
    fills: depthMm / Math.max(deepest, 0.1),
  };
}

/** Columns round the card, whatever the index. */
export function columnOf({ rays }: BorderStrip, index: number): number {
  return ((index % rays.length) + rays.length) % rays.length;
}

/** Share of a stretch of border whose colour is not the border's, own cells left out. */
function unrestBetween(
  { strip, borderRows, away, limit }: Pick<Seen, 'strip' | 'borderRows' | 'away' | 'limit'>,
  [first, last]: readonly [number, number],
  own: ReadonlySet<number>,
): number {
  const from = Math.round((UNREST_FROM_MM - strip.firstMm) / strip.stepMm);
  let [other, all] = [0, 0];
  for (let index = first; index <= last; index += 2) {
    const column = columnOf(strip, index);
    for (let row = from; row < (borderRows[column] as number); row += 2) {
      const cell = column * strip.rows + row;
      if (own.has(cell)) continue;
      all++;
      if ((away[cell] as number) > limit) other++;
    }
  }
  return all > 0 ? other / all : 1;
}

/** How much the ground outside the place looks like the place and unlike the ground beside it. */
function overlapOf(strip: BorderStrip, place: WornPlace): number {
  const inside = meanOf(strip, place.first, place.last, 0.1, 0.3);
  const outside = meanOf(strip, place.first, place.last, -0.6, -0.3);
  const span = Math.max(40, place.last - place.first);
  const before = meanOf(strip, place.first - span - 10, place.first - 10, -0.6, -0.3);
  const after = meanOf(strip, place.last + 10, place.last + span + 10, -0.6, -0.3);
  const usual = before.map((v, k) => (v + (after[k] as number)) / 2);
  const apart = distance(usual, inside);
  const near = distance(outside, inside);
  return apart > 0 ? Math.max(0, 1 - near / apart) : 0;
}

function distance(a: readonly number[], b: readonly number[]): number {
  return Math.hypot(...a.map((v, k) => v - (b[k] as number)));
}

function meanOf(
  strip: BorderStrip,
  first: number,
  last: number,
  fromMm: number,
  toMm: number,
): readonly number[] {
  const from = Math.round((fromMm - strip.firstMm) / strip.stepMm);
  const to = Math.round((toMm - strip.firstMm) / strip.stepMm);
  return strip.values.map((light) => {
    let [sum, all] = [0, 0];
    for (let index = first; index <= last; index++)
      for (let row = from; row <= to; row++) {
        const value = light[columnOf(strip, index) * strip.rows + row] as number;
        if (Number.isNaN(value)) continue;
        sum += value;
        all++;
      }
    return all > 0 ? sum / all : 0;
  });
}
