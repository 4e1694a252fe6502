/** A value from 0 to 1 that a cell of a grid and a seed determine. */
export function hashed(x: number, y: number, seed: number): number {
  let h = Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ Math.imul(seed, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4_294_967_296;
}

/** Smooth noise from 0 to 1 with one knot to the unit. */
export function smooth(x: number, y: number, seed: number): number {
  const i = Math.floor(x);
  const j = Math.floor(y);
  const u = x - i;
  const v = y - j;
  const su = u * u * (3 - 2 * u);
  const sv = v * v * (3 - 2 * v);
  const a = hashed(i, j, seed);
  const b = hashed(i + 1, j, seed);
  const c = hashed(i, j + 1, seed);
  const d = hashed(i + 1, j + 1, seed);
  return a + (b - a) * su + (c - a) * sv + (a - b - c + d) * su * sv;
}

/** Noise of several octaves, 0 to 1. */
export function layered(x: number, y: number, seed: number, octaves: number): number {
  let sum = 0;
  let weight = 0.5;
  let total = 0;
  for (let o = 0; o < octaves; o++) {
    const f = 1 << o;
    sum += weight * smooth(x * f + 17.3 * o, y * f - 9.1 * o, seed + o);
    total += weight;
    weight *= 0.55;
  }
  return sum / total;
}

/** The nearest of points strewn one to a cell: distance to it, to the second, and its own value. */
export function cells(x: number, y: number, seed: number, out: Float64Array): void {
  const i = Math.floor(x);
  const j = Math.floor(y);
  let [first, second, value] = [9, 9, 0];
  for (let dj = -1; dj <= 1; dj++)
    for (let di = -1; di <= 1; di++) {
      const px = i + di + hashed(i + di, j + dj, seed) - x;
      const py = j + dj + hashed(i + di, j + dj, seed + 1) - y;
      const d = Math.sqrt(px * px + py * py);
      if (d < first) {
        second = first;
        first = d;
        value = hashed(i + di, j + dj, seed + 2);
      } else if (d < second) second = d;
    }
  out[0] = first;
  out[1] = second;
  out[2] = value;
}
