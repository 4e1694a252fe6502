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
  const [red, green, blue] = LUMINANCE;
  const seen: { readonly light: readonly number[]; readonly y: number }[] = [];
  for (let i = 0; i < ACROSS; i++)
    for (let j = 0; j < DOWN; j++) {
      const [u, v] = pixelOf(map, [
        1 + ((width - 2) * i) / (ACROSS - 1),
        1 + ((height - 2) * j) / (DOWN - 1),
      ]);
      const x = Math.round(u);
      const y = Math.round(v);
      if (x < 0 || y < 0 || x >= picture.width || y >= picture.height) continue;
      const at = 3 * (y * picture.width + x);
      const r = table[picture.samples[at] as number] as number;
      const g = table[picture.samples[at + 1] as number] as number;
      const b = table[picture.samples[at + 2] as number] as number;
      seen.push({ light: [r, g, b], y: r * red + g * green + b * blue });
    }
  const pale = seen
    .sort((a, b) => b.y - a.y)
    .slice(Math.floor(FROM * seen.length), Math.ceil(TO * seen.length));
  return [0, 1, 2].map(
    (k) => pale.reduce((sum, { light }) => sum + (light[k] as number), 0) / pale.length,
  );
}
