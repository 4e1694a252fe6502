import type { Strip } from './strip.ts';

/** A Gaussian is cut off so many standard deviations out. */
export const CUT = 3.5;

/** Change of colour from one depth to the next, smoothed by a Gaussian of `sigma` depths. */
export function derivativeOf({ colours, columns, depths }: Strip, sigma: number): Float32Array {
  const reach = Math.ceil(CUT * sigma);
  const kernel = Float64Array.from(
    { length: 2 * reach + 1 },
    (_, i) => (i - reach) * Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const norm = kernel.reduce((sum, weight, i) => sum + weight * (i - reach), 0);
  const row = columns * 3;
  const out = new Float32Array(colours.length);
  for (let d = reach; d < depths - reach; d++)
    for (let k = 1; k <= reach; k++) {
      const weight = (kernel[k + reach] as number) / norm;
      const [to, before, after] = [d * row, (d - k) * row, (d + k) * row];
      for (let i = 0; i < row; i++)
        out[to + i] =
          (out[to + i] as number) +
          weight * ((colours[after + i] as number) - (colours[before + i] as number));
    }
  return out;
}
