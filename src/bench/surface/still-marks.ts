import type { Defect, DefectKind } from '../defects.ts';
import { bySide } from '../frame/sides.ts';
import type { Frame } from '../frame/types.ts';
import type { CardMap } from '../geometry/card-map.ts';
import type { Picture } from '../picture.ts';
import { cardWhiteOf } from '../wear/card-white.ts';
import { plainBordersOf } from './bands.ts';
import { cardTonesOf } from './card-tones.ts';
import { printLinesOf } from './print-lines.ts';
import { specksOf } from './specks.ts';
import { stainsOf } from './stains.ts';

/** Specks, stains and print lines of one still picture, and what it could not show. */
export interface StillMarks {
  readonly defects: readonly Defect[];
  /** The smallest mark of each kind that would have shown, mm; a kind that could not is left out. */
  readonly limits: readonly { readonly kinds: readonly DefectKind[]; readonly mm: number }[];
}

/**
 * Marks that one still picture shows without a second one to compare with: white specks and stains
 * in the border, where it is of one colour, and lines that cross border and art alike. Art has
 * specks and lines of its own, so that nothing is said of those inside the frame, and nothing at all
 * of a card whose art runs to the edge.
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
  if (!frame?.bordersMm) return { defects: [], limits: [] };
  const { rotationDeg } = frame;
  const card = cardTonesOf(picture, map);
  const plain = plainBordersOf(card, map.sizeMm, frame.bordersMm, rotationDeg);
  const bands = bySide((side) => plain[side]?.band ?? null);
  const plainMm = bySide((side) => plain[side]?.toMm ?? null);
  const specks = specksOf(card, map.sizeMm, bands, cardWhiteOf(picture, map), onGlass);
  const stains = stainsOf(card, map.sizeMm, bands);
  const limit = (kind: DefectKind, mm: number | null) =>
    mm === null ? [] : [{ kinds: [kind], mm }];
  return {
    defects: [
      ...specks.defects,
      ...stains.defects,
      ...printLinesOf(card, map.sizeMm, { plainMm, rotationDeg }),
    ].filter(({ p }) => p > 0.01),
    limits: [
      ...limit('speck', specks.detectionLimitMm),
      ...limit('stain', stains.detectionLimitMm),
    ],
  };
}
