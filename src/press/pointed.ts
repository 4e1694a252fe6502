import { type Picture, pixelOf, type SizeMm } from '../bench/index.ts';
import type { PointedPlace, SitePicture } from '../chronicle/index.ts';
import { cardOn } from './card-on.ts';

/**
 * Where places of a card lie on a picture of it, as shares of its width and height; undefined where
 * the card's outline is not sure.
 */
export function marksOn(
  picture: Picture,
  sizeMm: SizeMm,
  places: readonly PointedPlace[],
): SitePicture['marks'] {
  const map = cardOn(picture, sizeMm);
  if (map === undefined) return undefined;
  const share = (at: number, length: number) =>
    Math.min(1, Math.max(0, Number((at / length).toFixed(4))));
  return places.map(({ boxMm: [left, top, right, bottom] }) =>
    [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ].map(([x = 0, y = 0]) => {
      const [px, py] = pixelOf(map, [x, y]);
      return [share(px, picture.width), share(py, picture.height)] as const;
    }),
  );
}
