import type { Defect } from '../defects.ts';
import type { CardMap } from '../geometry/card-map.ts';
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
}
