import type { Correction } from '../colour/chart.ts';
import type { Defect } from '../defects.ts';
import type { FaceAnswer } from '../examine/types.ts';
import { type CardMap, cardMapOf } from '../geometry/card-map.ts';
import type { SizeMm } from '../geometry/points.ts';
import type { Outline } from '../outline/types.ts';
import type { Picture } from '../picture.ts';

/** One face of a copy in a picture, outlined. */
export interface Seen {
  readonly picture: Picture;
  readonly map: CardMap;
  /** Standard error of a corner, in millimetres of the card. */
  readonly cornerSdMm: number;
  /** The size that was measured (by dots an inch), with its standard error; null where it was only told. */
  readonly measured: { readonly mm: readonly [number, number]; readonly sd: number } | null;
  readonly defects: readonly Defect[];
  /** What a chart beside the card corrects the picture's colours by, where there is one. */
  readonly chart?: Correction;
}

/** A measured face as comparisons take it, at the size told; null where its outline is not sure. */
export function seenOf(picture: Picture, face: FaceAnswer, sizeMm: SizeMm): Seen | null {
  const { outline, trouble } = face;
  return !outline || trouble || outline.p < 0.5 ? null : seenAt(picture, outline, face, sizeMm);
}

/** A face within an outline as comparisons take it, at the size told. */
export function seenAt(
  picture: Picture,
  { corners, covariance, lens }: Outline,
  { size, defects }: Pick<FaceAnswer, 'size' | 'defects'>,
  sizeMm: SizeMm,
): Seen {
  const map = cardMapOf(corners, sizeMm, lens);
  const [[x0, y0], [x1, y1]] = corners;
  const pxPerMm = Math.hypot(x1 - x0, y1 - y0) / sizeMm[0];
  const variances = Array.from({ length: 8 }, (_, i) => covariance[i * 9 + i] as number);
  const sdPx = Math.sqrt(variances.reduce((a, b) => a + b, 0) / 8);
  const measured =
    size?.from === 'dpi' && size.sdMm ? { mm: size.mm, sd: Math.max(...size.sdMm) } : null;
  return { picture, map, cornerSdMm: sdPx / pxPerMm, measured, defects };
}
