import type { Lab } from './ciede2000.ts';

/** Three linear values: red, green and blue light, or X, Y and Z. */
export type Three = readonly [number, number, number];

/** A matrix of three rows. */
export type Matrix = readonly [Three, Three, Three];

/** White of daylight, 6,500 K, 2 degrees (`iec:61966-2-1`). */
export const D65: Three = [0.95047, 1, 1.08883];

/** White of the graphic trade, 5,000 K, 2 degrees (`cie:15`, as in ISO 13655). */
export const D50: Three = [0.96422, 1, 0.82521];

const XYZ_OF_SRGB: Matrix = [
  [0.412453, 0.35758, 0.180423],
  [0.212671, 0.71516, 0.072169],
  [0.019334, 0.119193, 0.950227],
];

const SRGB_OF_XYZ = inverted(XYZ_OF_SRGB);

/** Cone responses by which Bradford's adaptation scales (`lam:1985`). */
const BRADFORD: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

/** X, Y, Z under D65 of linear sRGB light, 0 to 1. */
export function xyzOfLight(light: Three): Three {
  return times(XYZ_OF_SRGB, light);
}

/** Linear sRGB light of X, Y, Z under D65; below 0 or above 1 outside the gamut. */
export function lightOfXyz(xyz: Three): Three {
  return times(SRGB_OF_XYZ, xyz);
}

/** The matrix that carries X, Y, Z seen under one white to those of the same look under another. */
export function adaptation(from: Three, to: Three): Matrix {
  const [a, b] = [times(BRADFORD, from), times(BRADFORD, to)];
  const scaled = BRADFORD.map((row, i) =>
    row.map((value) => (value * (b[i] as number)) / (a[i] as number)),
  ) as unknown as Matrix;
  return product(inverted(BRADFORD), scaled);
}

const TO_D50 = adaptation(D65, D50);
const TO_D65 = adaptation(D50, D65);

/** Lab under D50 of linear sRGB light, adapted by Bradford. */
export function labOfLight(light: Three): Lab {
  return labOfXyz(times(TO_D50, xyzOfLight(light)), D50);
}

/** Linear sRGB light of a Lab under D50. */
export function lightOfLab(lab: Lab): Three {
  return lightOfXyz(times(TO_D65, xyzOfLab(lab, D50)));
}

const KNEE = 6 / 29;

/** Lab of X, Y, Z under a white (`cie:15`); the straight part is carried on below zero. */
export function labOfXyz(xyz: Three, white: Three): Lab {
  const [x, y, z] = xyz.map((value, i) => {
    const ratio = value / (white[i] as number);
    return ratio > KNEE ** 3 ? Math.cbrt(ratio) : ratio / (3 * KNEE ** 2) + 4 / 29;
  }) as unknown as Three;
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** X, Y, Z of Lab under a white (`cie:15`). */
export function xyzOfLab([L, a, b]: Lab, white: Three): Three {
  const y = (L + 16) / 116;
  return [y + a / 500, y, y - b / 200].map(
    (f, i) => (f > KNEE ? f ** 3 : 3 * KNEE ** 2 * (f - 4 / 29)) * (white[i] as number),
  ) as unknown as Three;
}

/** A matrix times a column. */
export function times([p, q, r]: Matrix, [x, y, z]: Three): Three {
  return [
    p[0] * x + p[1] * y + p[2] * z,
    q[0] * x + q[1] * y + q[2] * z,
    r[0] * x + r[1] * y + r[2] * z,
  ];
}

function product(a: Matrix, b: Matrix): Matrix {
  const column = (j: 0 | 1 | 2) => times(a, [b[0][j], b[1][j], b[2][j]]);
  const [x, y, z] = [column(0), column(1), column(2)];
  return [0, 1, 2].map((i) => [x[i], y[i], z[i]]) as unknown as Matrix;
}

function inverted([p, q, r]: Matrix): Matrix {
  const cross = (a: Three, b: Three): Three => [
    a[1] * b[2] - a[2] * b[1],
    a[2] * b[0] - a[0] * b[2],
    a[0] * b[1] - a[1] * b[0],
  ];
  const [u, v, w] = [cross(q, r), cross(r, p), cross(p, q)];
  const size = p[0] * u[0] + p[1] * u[1] + p[2] * u[2];
  return [0, 1, 2].map((i) =>
    [u, v, w].map((column) => (column[i] as number) / size),
  ) as unknown as Matrix;
}
