import { type CardMap, pixelOf } from '../geometry/card-map.ts';
import { LUMINANCE, lightTable } from '../light/srgb.ts';
import type { Picture } from '../picture.ts';

const [ACROSS, DOWN] = [60, 80];
const [FROM, TO] = [0.01, 0.03];

/**
 * Light of the palest places of a card, as red, green and blue: the mean of the second and third
 * palest of a hundred. Misleads where nothing on the card is pale: white is then taken for darker
 * than it is, and whiteness for more.
 */
export function cardWhiteOf(picture: Picture, map: CardMap): readonly number[] {
  const table = lightTable(picture);
  const [width, height] = map.sizeMm;
  const seen: number[][] = [];
  for (let i = 0; i < ACROSS; i++)
    for (let j = 0; j < DOWN; j++) {
      const [x, y] = pixelOf(map, [
        1 + ((width - 2) * i) / (ACROSS - 1),
        1 + ((height - 2) * j) / (DOWN - 1),
      ]).map(Math.round) as [number, number];
      if (x < 0 || y < 0 || x >= picture.width || y >= picture.height) continue;
      const at = 3 * (y * picture.width + x);
      seen.push([0, 1, 2].map((k) => table[picture.samples[at + k] as number] as number));
    }
  const pale = seen
    .map((light) => ({
      light,
      y: light.reduce((sum, v, k) => sum + v * (LUMINANCE[k] as number), 0),
    }))
    .sort((a, b) => b.y - a.y)
    .slice(Math.floor(FROM * seen.length), Math.ceil(TO * seen.length));
  return [0, 1, 2].map(
    (k) => pale.reduce((sum, { light }) => sum + (light[k] as number), 0) / pale.length,
  );
}
