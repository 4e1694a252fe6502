/** A colour in CIELAB: lightness, red over green, yellow over blue; the white is said where it is used. */
export type Lab = readonly [L: number, a: number, b: number];

const RADIANS = Math.PI / 180;
const POWER_25 = 25 ** 7;

/** The CIEDE2000 difference of two colours (`sharma:2005`, equations 2 to 22, all weights 1). */
export function ciede2000([L1, a1, b1]: Lab, [L2, a2, b2]: Lab): number {
  const meanChroma = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const stretch = 1.5 - 0.5 * pull(meanChroma);
  const [C1, h1] = polar(a1 * stretch, b1);
  const [C2, h2] = polar(a2 * stretch, b2);
  const dL = L2 - L1;
  const dC = C2 - C1;
  const turn = C1 * C2 === 0 ? 0 : ((h2 - h1 + 540) % 360) - 180;
  const dH = 2 * Math.sqrt(C1 * C2) * Math.sin((turn / 2) * RADIANS);
  const L = (L1 + L2) / 2;
  const C = (C1 + C2) / 2;
  const h = meanHue(C1 * C2, h1, h2);
  const T =
    1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.2 * cos(4 * h - 63);
  const forL = dL / (1 + (0.015 * (L - 50) ** 2) / Math.sqrt(20 + (L - 50) ** 2));
  const forC = dC / (1 + 0.045 * C);
  const forH = dH / (1 + 0.015 * C * T);
  const rotation = -2 * pull(C) * Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * RADIANS);
  return Math.sqrt(forL ** 2 + forC ** 2 + forH ** 2 + rotation * forC * forH);
}

function pull(chroma: number): number {
  return Math.sqrt(chroma ** 7 / (chroma ** 7 + POWER_25));
}

function polar(a: number, b: number): readonly [chroma: number, hue: number] {
  const hue = Math.atan2(b, a) / RADIANS;
  return [Math.hypot(a, b), hue < 0 ? hue + 360 : hue];
}

/** The mean of two hues along the shorter way; their sum where one colour has none. */
function meanHue(chromas: number, h1: number, h2: number): number {
  if (chromas === 0) return h1 + h2;
  if (Math.abs(h1 - h2) <= 180) return (h1 + h2) / 2;
  return (h1 + h2 + (h1 + h2 < 360 ? 360 : -360)) / 2;
}

function cos(degrees: number): number {
  return Math.cos(degrees * RADIANS);
}
