import type { Corners } from '../geometry/points.ts';
import { type Picture, pictureOf } from '../picture.ts';

/** Share of the card's width and height that is left off on each side: rims, ground, borders. */
const RIM = 0.06;

/** The part of a scan that shows nothing but the card, upright as the scan is. */
export function cardAlone(picture: Picture, corners: Corners): Picture {
  const along = (k: 0 | 1) => {
    const sorted = corners.map((corner) => corner[k]).sort((a, b) => a - b);
    const [, low, high] = sorted as [number, number, number, number];
    const rim = RIM * (high - low);
    const most = (k === 0 ? picture.width : picture.height) - 1;
    return [
      Math.min(most, Math.max(0, Math.ceil(low + rim))),
      Math.max(0, Math.min(most, Math.floor(high - rim))),
    ] as const;
  };
  const [[x0, x1], [y0, y1]] = [along(0), along(1)];
  const width = Math.max(1, x1 - x0 + 1);
  const height = Math.max(1, y1 - y0 + 1);
  const { samples } = picture;
  const kept = samples instanceof Uint8Array ? Uint8Array : Uint16Array;
  const out = new kept(width * height * 3);
  for (let y = 0; y < height; y++) {
    const from = 3 * ((y0 + y) * picture.width + x0);
    out.set(samples.subarray(from, from + 3 * width), 3 * y * width);
  }
  return pictureOf(width, height, out, picture.dpi);
}
