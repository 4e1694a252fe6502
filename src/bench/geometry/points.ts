declare const space: unique symbol;

/** A point of a picture in pixels: x right, y down, the centre of the first pixel is (0, 0). */
export type PointPx = readonly [x: number, y: number] & { readonly [space]?: 'px' };

/** A point of a card in millimetres: from its top-left virtual corner, x right, y down, as the card is read. */
export type PointMm = readonly [x: number, y: number] & { readonly [space]?: 'mm' };

/** Width and height of a card in millimetres, as the card is read. */
export type SizeMm = readonly [width: number, height: number] & { readonly [space]?: 'size mm' };

/**
 * The virtual corners of a card in a picture, where its straight sides would meet if the tips were
 * not round: top-left, top-right, bottom-right, bottom-left of the card as it is read.
 */
export type Corners = readonly [PointPx, PointPx, PointPx, PointPx];

/** Distance between two points of a picture, in pixels. */
export function distanceBetween([ax, ay]: PointPx, [bx, by]: PointPx): number {
  return Math.hypot(bx - ax, by - ay);
}
