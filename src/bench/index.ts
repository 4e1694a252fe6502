export type { BoxMm, Defect, DefectKind, DefectSd } from './defects.ts';
export { type CardMap, cardMapOf, cardPointOf, pixelOf } from './geometry/card-map.ts';
export type { Lens } from './geometry/lens.ts';
export type { Corners, PointMm, PointPx, SizeMm } from './geometry/points.ts';
export { luminanceOf } from './light/luminance.ts';
export { outlineByHand } from './outline/by-hand.ts';
export type { Outline, OutlineAnswer, OutlineKnown, OutlineTrouble } from './outline/types.ts';
export { type Picture, type Plane, pictureOf } from './picture.ts';
