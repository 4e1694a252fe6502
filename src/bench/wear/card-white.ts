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
  const lights: number[] = [];
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
      for (let k = 0; k < 3; k++) lights.push(table[picture.samples[at + k] as number] as number);
    }
  const luminance = Float64Array.from(
    { length: lights.length / 3 },
    (_, i) =>
      (lights[3 * i] as number) * red +
      (lights[3 * i + 1] as number) * green +
      (lights[3 * i + 2] as number) * blue,
  );
  const byRank = luminance.slice().sort().reverse();
  const most = byRank[Math.floor(FROM * byRank.length)] as number;
  const least = byRank[Math.ceil(TO * byRank.length) - 1] as number;
  const pale = [...luminance.keys()].filter(
    (i) => (luminance[i] as number) >= least && (luminance[i] as number) <= most,
  );
  return [0, 1, 2].map(
    (k) => pale.reduce((sum, i) => sum + (lights[3 * i + k] as number), 0) / pale.length,
  );
}
