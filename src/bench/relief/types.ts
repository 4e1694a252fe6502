import type { Defect, DefectSd } from '../defects.ts';
import type { PointPx } from '../geometry/points.ts';
import type { Picture } from '../picture.ts';
import type { PlaceMm } from './lighting.ts';
import type { Slopes } from './slopes.ts';

/** A picture of the card under one lamp; null where it is not known where the lamp stood. */
export interface LampPicture {
  readonly picture: Picture;
  readonly lampMm: PlaceMm | null;
  /** What faults call it; its number where it has none. */
  readonly name?: string;
}

/** A matt ball that lies beside the card, as the first picture shows it. */
export interface Ball {
  readonly centrePx: PointPx;
  readonly radiusPx: number;
  readonly radiusMm: number;
}

/** Where a lamp stood, who says so, and by how many degrees its direction may be off. */
export interface LampUsed {
  readonly placeMm: PlaceMm;
  readonly from: 'given' | 'ball' | 'shadow';
  readonly sdDeg: number;
}

/** A dent, crease or groove; width at half its depth and the depth of its deepest point, mm. */
export interface ReliefDefect extends Defect {
  readonly diameterMm: number;
  /** Null where the pictures show that there is relief, but not how deep. */
  readonly depthMm: number | null;
  /** Of a ridge, how far its crest stands above the undisturbed surface, mm; null for what is no ridge. */
  readonly heightMm: number | null;
  /** `depthMm` is the standard error of the height where there is one. */
  readonly sd: DefectSd & { readonly diameterMm: number; readonly depthMm: number | null };
}

/** The shallowest dent of a width that nine tenths of the card would have shown. */
export interface ReliefLimit {
  readonly diameterMm: number;
  readonly depthMm: number;
}

/** What a set of pictures under a moved lamp says of a card's surface. */
export interface Relief {
  readonly defects: readonly ReliefDefect[];
  readonly lamps: readonly LampUsed[];
  readonly limits: readonly ReliefLimit[];
  /** Sentences on what is wrong with the set, or what it cannot show, and what to photograph again. */
  readonly faults: readonly string[];
  /** Slopes over the card, for showing; null where none could be found. */
  readonly slopes: Slopes | null;
}
