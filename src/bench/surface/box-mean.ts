import type { Plane } from '../picture.ts';

/** Mean over squares of 2 · `reach` + 1 pixels, smaller at the rim, by running sums. */
export function boxMeanOf({ width, height, values }: Plane, reach: number): Plane {
  const across = new Float32Array(values.length);
  for (let y = 0; y < height; y++) {
    const start = y * width;
    let sum = 0;
    let count = 0;
    for (let x = -reach; x < width; x++) {
      if (x + reach < width) {
        sum += values[start + x + reach] as number;
        count++;
      }
      if (x - reach - 1 >= 0) {
        sum -= values[start + x - reach - 1] as number;
        count--;
      }
      if (x >= 0) across[start + x] = sum / count;
    }
  }
  const out = new Float32Array(values.length);
  const sums = new Float64Array(width);
  let count = 0;
  for (let y = -reach; y < height; y++) {
    if (y + reach < height) {
      const start = (y + reach) * width;
      for (let x = 0; x < width; x++) sums[x] = (sums[x] as number) + (across[start + x] as number);
      count++;
    }
    if (y - reach - 1 >= 0) {
      const start = (y - reach - 1) * width;
      for (let x = 0; x < width; x++) sums[x] = (sums[x] as number) - (across[start + x] as number);
      count--;
    }
    if (y >= 0) for (let x = 0; x < width; x++) out[y * width + x] = (sums[x] as number) / count;
  }
  return { width, height, values: out };
}
