type Lab = readonly [L: number, a: number, b: number];

/** CIE Lab of linear sRGB under D65 (`iec:61966-2-1`). */
export function labOfLight([r = 0, g = 0, b = 0]: readonly number[]): Lab {
  const x = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
  const y = f(0.2126729 * r + 0.7151522 * g + 0.072175 * b);
  const z = f((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/** Distance of two colours in Lab. */
export function distanceOf(one: Lab, other: Lab): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}

function f(t: number): number {
  return t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116;
}
