import { type CardMap, cardMapOf, findOutline, type Picture, type SizeMm } from '../bench/index.ts';
import type { Account } from '../chronicle/index.ts';

/** The size of an account's card; null where it is not known. */
export function sizeOf({ subject: { widthMm, heightMm } }: Account): SizeMm | null {
  return widthMm && heightMm ? [widthMm, heightMm] : null;
}

/** Where a card lies on a picture; undefined where its outline is not sure. */
export function cardOn(picture: Picture, sizeMm: SizeMm): CardMap | undefined {
  const { hypotheses, trouble } = findOutline(picture, { sizeMm, dpi: null });
  const [outline] = hypotheses;
  if (outline === undefined || trouble !== null) return undefined;
  return cardMapOf(outline.corners, sizeMm, outline.lens);
}
