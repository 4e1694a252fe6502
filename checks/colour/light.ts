/** A colour in CIELAB under D50. */
export type Lab = readonly [number, number, number];

const WHITE = [0.96422, 1, 0.82521] as const;

/**
 * Linear sRGB of X, Y, Z under D50, Bradford's adaptation included, to seven decimals as Lindbloom
 * publishes it: another way than the code under test goes.
 */
const LIGHT_OF_XYZ = [
  [3.1338561, -1.6168667, -0.4906146],
  [-0.9787684, 1.9161415, 0.033454],
  [0.0719453, -0.2289914, 1.4052427],
] as const;

/** Linear sRGB light of a colour. */
export function lightOf([L, a, b]: Lab): readonly [number, number, number] {
  const y = (L + 16) / 116;
  const xyz = [y + a / 500, y, y - b / 200].map(
    (f, i) => (f > 6 / 29 ? f ** 3 : (f - 4 / 29) / 7.787) * (WHITE[i] as number),
  );
  return LIGHT_OF_XYZ.map((row) =>
    row.reduce((sum, one, i) => sum + one * (xyz[i] as number), 0),
  ) as unknown as readonly [number, number, number];
}
