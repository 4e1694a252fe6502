import type { Plane } from '../picture.ts';

/**
 * By how many pixels, across and down, a picture lies off what was expected of it: the shift that
 * best explains what is left, by least squares on the change from pixel to pixel (`lucas:1981`).
 * Good for shifts under the width of the print's edges.
 *
 * @param left what is left as a share of `expected`
 */
export function shiftOf(left: Plane, expected: Plane): readonly [x: number, y: number] {
  const { width, height, values } = expected;
  let [xx, xy, yy, xv, yv] = [1e-9, 0, 1e-9, 0, 0];
  for (let y = 8; y < height - 8; y += 2)
    for (let x = 8, i = y * width + 8; x < width - 8; x += 2, i += 2) {
      const here = values[i] as number;
      const across = ((values[i + 1] as number) - (values[i - 1] as number)) / (2 * here);
      const down = ((values[i + width] as number) - (values[i - width] as number)) / (2 * here);
      const value = Math.max(-0.3, Math.min(0.3, left.values[i] as number));
      xx += across * across;
      xy += across * down;
      yy += down * down;
      xv += across * value;
      yv += down * value;
    }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-12)) return [0, 0];
  return [-(xv * yy - yv * xy) / determinant, -(yv * xx - xv * xy) / determinant];
}
