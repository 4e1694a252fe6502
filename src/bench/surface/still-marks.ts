import type { Defect, DefectKind } from '../defects.ts';
import type { Limit } from '../examine/types.ts';
import { type BySide, bySide } from '../frame/sides.ts';
import type { Frame } from '../frame/types.ts';
import type { CardMap } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { cardWhiteOf } from '../wear/card-white.ts';
import { plainBordersOf } from './bands.ts';
import { type CardTones, cardTonesOf } from './card-tones.ts';
import { printLinesOf } from './print-lines.ts';
import { printSpecksOf } from './print-specks.ts';
import { silveringOf } from './silvering.ts';
import { MOST_ON_GLASS, specksOf } from './specks.ts';
import { stainsOf } from './stains.ts';

/** Specks, stains and print lines of one still picture, and what it could not show. */
export interface StillMarks {
  readonly defects: readonly Defect[];
  /** The smallest mark of each kind that would have shown, mm; a kind that could not is left out. */
  readonly limits: readonly Limit[];
}

/** Depth at which the print of a card without a border is looked at, mm: wear reaches that far. */
const NO_BORDER_MM = 1.5;
/** Frames are up to so wide, inside their outermost line. Judgement, no source. */
const FRAME_MM = 1.2;

/**
 * Marks that one still picture shows without a second one to compare with: white specks and stains
 * in the border, where it is of one colour, lines that cross border and art alike, silvering of dark
 * print, and light spots inside the print, which art may have of its own, so that none is as likely
 * as not.
 *
 * @param frame null where no border was found
 * @param onGlass whether it is a scan, so that dust on the glass is thought of
 */
export function stillMarksOf(
  picture: Picture,
  map: CardMap,
  frame: Frame | null,
  onGlass: boolean,
): StillMarks {
  const card = cardTonesOf(picture, map);
  const white = cardWhiteOf(picture, map);
  const borders = frame?.bordersMm ?? null;
  const inside = bySide((side) => (borders ? borders[side] + FRAME_MM : NO_BORDER_MM));
  const spots = printSpecksOf(card, map.sizeMm, inside, white);
  const border = borders
    ? borderMarksOf(card, map, { borders, white, onGlass, rotationDeg: frame?.rotationDeg ?? 0 })
    : { defects: [], limits: [] };
  const silver = silveringOf(card, map.sizeMm, borders, white);
  // Dust on the glass lies where it likes, but not along edges.
  const patches = silver.defects.map((patch) =>
    onGlass && patch.kind === 'speck' ? { ...patch, p: Math.min(MOST_ON_GLASS, patch.p) } : patch,
  );
  const single = [...border.defects, ...spots].filter(
    (mark) => !patches.some((patch) => partOf(mark, patch)),
  );
  return {
    defects: [...single, ...patches].filter(({ p }) => p > 0.01),
    limits: [
      ...border.limits,
      ...limit(['speck', 'edge-wear'], 'of silvering where print is dark', silver.detectionLimitMm),
    ],
  };
}

interface Bordered {
  readonly borders: BySide<number>;
  readonly rotationDeg: number;
  readonly white: readonly number[];
  readonly onGlass: boolean;
}

function borderMarksOf(
  card: CardTones,
  { sizeMm }: CardMap,
  { borders, rotationDeg, white, onGlass }: Bordered,
): StillMarks {
  const plain = plainBordersOf(card, sizeMm, borders, rotationDeg);
  const bands = bySide((side) => plain[side]?.band ?? null);
  const plainMm = bySide((side) => plain[side]?.toMm ?? null);
  const specks = specksOf(card, sizeMm, bands, white, onGlass);
  const stains = stainsOf(card, sizeMm, bands);
  const lines = printLinesOf(card, sizeMm, { plainMm, rotationDeg });
  return {
    defects: [...specks.defects, ...stains.defects, ...lines.defects],
    limits: [
      ...limit(['speck'], 'in the border', specks.detectionLimitMm),
      ...limit(['stain'], 'in the border', stains.detectionLimitMm),
      ...limit(['print-line'], 'all over', lines.detectionLimitMm),
    ],
  };
}

/** What could have shown of some kinds; nothing where the picture cannot tell. */
export function limit(
  kinds: readonly DefectKind[],
  where: Limit['where'],
  mm: number | null,
): readonly Limit[] {
  return mm === null ? [] : [{ kinds, where, mm }];
}

/** Whether a mark lies in a patch of silvering that is likelier than it, so that it is one of its specks. */
export function partOf({ centreMm: [x, y], areaMm2, p }: Defect, patch: Defect): boolean {
  const [x0, y0, x1, y1] = patch.boxMm;
  const near = x > x0 - NEAR_MM && x < x1 + NEAR_MM && y > y0 - NEAR_MM && y < y1 + NEAR_MM;
  return near && areaMm2 < patch.areaMm2 && patch.p >= Math.min(p, 0.5);
}

/** Specks of one patch lie up to that far apart. */
const NEAR_MM = 1.5;
