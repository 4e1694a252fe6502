import { quantileOf } from '../../maths/index.ts';
import type { BoxMm, Defect } from '../defects.ts';
import type { BySide } from '../frame/sides.ts';
import type { PointMm, SizeMm } from '../geometry/points.ts';
import { viewPointOf } from '../rectify/view.ts';
import { boxOf } from '../wear/place-extent.ts';
import { blobsOf } from './blobs.ts';
import { type CardTones, GROUND_MM, pxOf } from './card-tones.ts';
import { openedOf } from './opening.ts';

/** Silvered places, and the width of the smallest speck of one that would have shown, mm. */
export interface Silvering {
  readonly defects: readonly Defect[];
  /** Null where too little of the face is dark. */
  readonly detectionLimitMm: number | null;
}

/** Specks are narrower than 1.3 mm. */
const REACH_MM = 0.57;
/** How much lighter in tone than what surrounds it a speck is at least. */
const LEAST_TONE = 0.08;
/** Bare foil and board are that near to the card's white in tone, and that grey. Judgement, no source. */
const LEAST_WHITENESS = 0.55;
const MOST_COLOUR = 0.2;
/** Silver shows on what is darker than this share of white, in tone. Judgement, no source. */
const MOST_AROUND = 0.45;
/** Specks within twice that of each other belong to one place. */
const JOIN_MM = 0.7;
/** Beside that distance around a place it is looked at what the print is there. */
const BESIDE_MM = 1.15;
/** Share of pale print there from which on specks are gaps between letters. Judgement, no source. */
const MOST_PALE = 0.15;
const [LEAST_MM2, MOST_MM2] = [0.06, 40];
/** Fewer are no pattern. */
const LEAST_SPECKS = 3;
/** Most that is believed inside the print, where art has bright specks of its own. Judgement, no source. */
const MOST_IN_PRINT = 0.45;
const EDGE_MM = 0.6;
/** What stays nearer to the cut edge is ground or the card's side face, mixed in. */
const RIM_MM = 0.3;

/**
 * Silvering: ink or foil rubbed or lifted off dark and holographic print, in bright, colourless,
 * broken specks, along edges and inside. Whitening is one piece; letters and stars are of one size.
 *
 * @param borders how wide the border is along each side, mm; null: the print reaches the cut edge
 * @param white light of the card's white, red, green and blue
 */
export function silveringOf(
  card: CardTones,
  size: SizeMm,
  borders: BySide<number> | null,
  white: readonly number[],
): Silvering {
  const bright = brightOf(card, size, white);
  const groups = groupsOf(card, bright.mask);
  const places = groups.flatMap((cells) => placeOf(card, size, bright, cells) ?? []);
  const printed = places.map(({ boxMm }) => !borders || !inBorder(boxMm, size, borders));
  const inPrintMm2 = places.reduce((sum, { areaMm2 }, i) => sum + (printed[i] ? areaMm2 : 0), 0);
  return {
    defects: places.map((place, i) =>
      defectOf(place, printed[i] ? inPrintMm2 - place.areaMm2 : null),
    ),
    detectionLimitMm: limitOf(card, bright),
  };
}

interface Bright {
  readonly mask: Uint8Array;
  /** Darkest channel of each pixel as a share of white's, and without what is narrow and light. */
  readonly least: Float32Array;
  readonly ground: Float32Array;
}

function brightOf(card: CardTones, size: SizeMm, white: readonly number[]): Bright {
  const { view, tones } = card;
  const [red, green, blue] = white.map((light) => 1 / Math.sqrt(light)) as [number, number, number];
  const least = new Float32Array(tones.length / 3);
  const most = new Float32Array(tones.length / 3);
  for (let i = 0, j = 0; i < least.length; i++, j += 3) {
    const r = (tones[j] as number) * red;
    const g = (tones[j + 1] as number) * green;
    const b = (tones[j + 2] as number) * blue;
    least[i] = Math.min(r, g, b);
    most[i] = Math.max(r, g, b);
  }
  blacken(least, card, size);
  const ground = openedOf({ ...view, values: least }, pxOf(card, REACH_MM)).values;
  const mask = new Uint8Array(least.length);
  for (let i = 0; i < mask.length; i++) {
    const value = least[i] as number;
    const about = ground[i] as number;
    const grey = (most[i] as number) - value < MOST_COLOUR * (most[i] as number);
    if (grey && value > Math.max(about + LEAST_TONE, LEAST_WHITENESS) && about < MOST_AROUND)
      mask[i] = 1;
  }
  return { mask, least, ground };
}

/** What lies outside the card is made darkest, so that ground is no speck's surrounding. */
function blacken(values: Float32Array, card: CardTones, [w, h]: SizeMm): void {
  const px = (mm: number) => pxOf(card, mm + GROUND_MM);
  const [from, right, bottom] = [px(0), px(w), px(h)];
  for (let i = 0, y = 0; i < values.length; y++)
    for (let x = 0; x < card.view.width; x++, i++)
      if (x < from || y < from || x >= right || y >= bottom) values[i] = 0;
}

/** Cells of specks that lie near each other. */
function groupsOf(card: CardTones, mask: Uint8Array): readonly (readonly number[])[] {
  const { width } = card.view;
  const join = pxOf(card, JOIN_MM);
  const wide = new Uint8Array(mask.length);
  for (let i = 0; i < mask.length; i++) {
    if (mask[i] === 0) continue;
    for (let dy = -join; dy <= join; dy++)
      wide.fill(1, i + dy * width - join, i + dy * width + join + 1);
  }
  return blobsOf(wide, width)
    .map((cells) => cells.filter((cell) => mask[cell] === 1))
    .filter((cells) => cells.length > LEAST_MM2 * card.pxPerMm ** 2);
}

interface Place {
  readonly boxMm: BoxMm;
  readonly centreMm: PointMm;
  readonly areaMm2: number;
  readonly edgeMm: number;
  /** Separate specks, and the spread of their areas over the mean. */
  readonly specks: number;
  readonly uneven: number;
  /** Share of white in tone: of the specks, and of what lies between them. */
  readonly whiteness: number;
  readonly around: number;
}

function placeOf(
  card: CardTones,
  [w, h]: SizeMm,
  bright: Bright,
  cells: readonly number[],
): Place | null {
  const { view, pxPerMm } = card;
  const { least, ground } = bright;
  const points = cells.map((cell) =>
    viewPointOf(view, [cell % view.width, Math.floor(cell / view.width)]),
  );
  if (paleAround(card, bright, cells) > MOST_PALE) return null;
  const edges = points.map(([x, y]) => Math.min(x, y, w - x, h - y));
  const areaMm2 = cells.length / pxPerMm ** 2;
  if (areaMm2 > MOST_MM2) return null;
  const [x0, y0, x1, y1] = boxOf(points);
  const half = 0.5 / pxPerMm;
  const specks = specksOf(cells, view.width);
  const [nearest, deepest] = [Math.min(...edges), Math.max(...edges)];
  if (specks.length < LEAST_SPECKS || (nearest < EDGE_MM && deepest < RIM_MM)) return null;
  const mean = cells.length / specks.length;
  const middle = (axis: 0 | 1) => points.reduce((sum, p) => sum + p[axis], 0) / points.length;
  return {
    boxMm: [x0 - half, y0 - half, x1 + half, y1 + half],
    centreMm: [middle(0), middle(1)],
    areaMm2,
    edgeMm: nearest,
    specks: specks.length,
    uneven: Math.sqrt(specks.reduce((s, n) => s + (n / mean - 1) ** 2, 0) / specks.length),
    whiteness: quantileOf(
      cells.map((cell) => least[cell] as number),
      0.75,
    ),
    around: quantileOf(
      cells.map((cell) => ground[cell] as number),
      0.5,
    ),
  };
}

/** Share of the print in and about the place that is pale and no speck. */
function paleAround(card: CardTones, { mask, least }: Bright, cells: readonly number[]): number {
  const { width } = card.view;
  const beside = pxOf(card, BESIDE_MM);
  const [x0, y0, x1, y1] = boxOf(cells.map((cell) => [cell % width, Math.floor(cell / width)]));
  let [pale, all] = [0, 0];
  for (let y = y0 - beside; y <= y1 + beside; y++)
    for (let x = x0 - beside; x <= x1 + beside; x++) {
      const at = y * width + x;
      const tone = least[at] as number;
      if (!(tone > 0) || mask[at] === 1) continue;
      all++;
      if (tone > LEAST_WHITENESS) pale++;
    }
  return all > 0 ? pale / all : 1;
}

/** Cells of each separate speck. */
function specksOf(cells: readonly number[], width: number): readonly number[] {
  const rows = cells.map((cell) => Math.floor(cell / width));
  const columns = cells.map((cell) => cell % width);
  const [top, left] = [Math.min(...rows), Math.min(...columns)];
  const [down, across] = [Math.max(...rows) - top + 1, Math.max(...columns) - left + 1];
  const mask = new Uint8Array(down * across);
  cells.forEach((_, i) => {
    mask[((rows[i] as number) - top) * across + (columns[i] as number) - left] = 1;
  });
  return blobsOf(mask, across).map((blob) => blob.length);
}

/** Whether the whole place lies within the border, the frame's own blur left out. */
function inBorder(
  [x0, y0, x1, y1]: BoxMm,
  [w, h]: SizeMm,
  { left, right, top, bottom }: BySide<number>,
): boolean {
  const within = (deepest: number, border: number) => deepest < border - 0.2;
  return within(x1, left) || within(w - x0, right) || within(y1, top) || within(h - y0, bottom);
}

/** @param elsewhereMm2 area of places like it in the rest of the print; null for one in the border */
function defectOf(place: Place, elsewhereMm2: number | null): Defect {
  const { areaMm2, centreMm, boxMm } = place;
  const [x0, y0, x1, y1] = boxMm;
  const p = probabilityOf(place, elsewhereMm2 ?? 0);
  return {
    kind: place.edgeMm < EDGE_MM ? 'edge-wear' : 'speck',
    wear: 'silvering',
    centreMm,
    boxMm,
    areaMm2,
    lengthMm: Math.max(x1 - x0, y1 - y0),
    polygonMm: [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
    p: elsewhereMm2 === null ? p : Math.min(MOST_IN_PRINT, p),
    sd: { centreMm: 0.1, areaMm2: 0.02 + 0.25 * areaMm2, lengthMm: 0.3 },
    seenFrom: 'still',
  };
}

/** Weights are judgement, no source; the method page says what they reach on fresh pictures. */
function probabilityOf(place: Place, elsewhereMm2: number): number {
  const { specks, uneven, whiteness, around, areaMm2 } = place;
  const score =
    -4 +
    2 * Math.log(specks) +
    0.5 * Math.log(areaMm2) +
    Math.min(uneven, 1.5) +
    3 * (whiteness - around - 0.4) -
    1.5 * Math.log1p(elsewhereMm2 / areaMm2);
  return 1 / (1 + Math.exp(-score));
}

/** Width of the smallest bare speck whose light, spread by blur, still stands out on the dark print. */
function limitOf({ view, pxPerMm }: CardTones, { ground }: Bright): number | null {
  const dark: number[] = [];
  for (let i = 0; i < ground.length; i += 7) {
    const value = ground[i] as number;
    if (value > 0 && value < MOST_AROUND) dark.push(value);
  }
  const share = (7 * dark.length) / (view.width * view.height);
  if (share < LEAST_DARK) return null;
  const usual = quantileOf(dark, 0.5);
  const contrast = BARE - usual;
  const needed = Math.max(LEAST_TONE, LEAST_WHITENESS - usual);
  return Math.max(BLUR_MM * Math.sqrt(Math.min(1, needed / contrast)), 2 / pxPerMm);
}

/** Share of the face that is dark enough, bare foil's tone as a share of white's, and a speck's blur. Judgement, no source. */
const [LEAST_DARK, BARE, BLUR_MM] = [0.05, 0.9, 0.35];
