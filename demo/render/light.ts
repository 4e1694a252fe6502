/** Red, green and blue in linear light, 0 to 1. */
export type Rgb = readonly [number, number, number];

/** Light of an sRGB value (IEC 61966-2-1), both 0 to 1. */
export function lightOf(value: number): number {
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/** sRGB value of light (IEC 61966-2-1), both 0 to 1. */
export function codeOf(light: number): number {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** A colour by hue (0 to 1), saturation and value in sRGB, as light. */
export function hsv(hue: number, saturation: number, value: number): Rgb {
  const at = (n: number) => {
    const k = (n + hue * 6 + 600) % 6;
    return lightOf(value * (1 - saturation * Math.max(0, Math.min(k, 4 - k, 1))));
  };
  return [at(5), at(3), at(1)];
}

/** Between two colours in light. */
export function mixed(a: Rgb, b: Rgb, share: number): Rgb {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share];
}
const D50 = [0.9642, 1, 0.8251] as const;

/** Linear sRGB of Lab (D50, 2°), by Bradford's adaptation to D65; may lie outside 0 to 1. */
export function lightOfLab([l, a, b]: Rgb): Rgb {
  const fy = (l + 16) / 116;
  const back = (f: number) => (f > 6 / 29 ? f ** 3 : 3 * (6 / 29) ** 2 * (f - 4 / 29));
  const x = D50[0] * back(fy + a / 500);
  const y = back(fy);
  const z = D50[2] * back(fy - b / 200);
  // XYZ (D50) to linear sRGB with Bradford's adaptation, as ICC profiles of sRGB carry it.
  return [
    3.1338561 * x - 1.6168667 * y - 0.4906146 * z,
    -0.9787684 * x + 1.9161415 * y + 0.033454 * z,
    0.0719453 * x - 0.2289914 * y + 1.4052427 * z,
  ];
}
