import { type Densities, unit } from './inks.ts';
import type { Peak } from './peaks.ts';
import type { Spectrum } from './spectrum.ts';

/**
 * The colour that makes a peak: the direction in which the three densities rise and fall together
 * most, the first principal axis of the cross-spectra summed over both summits.
 */
export function colourOf({ planes }: Spectrum, { bins }: Peak): Densities {
  const [rr, gg, bb, rg, rb, gb] = planes.map(
    (plane) => (plane[bins[0]] as number) + (plane[bins[1]] as number),
  ) as [number, number, number, number, number, number];
  let axis: Densities = unit([1, 1, 1]);
  for (let round = 0; round < 50; round++) {
    const [r, g, b] = axis;
    axis = unit([rr * r + rg * g + rb * b, rg * r + gg * g + gb * b, rb * r + gb * g + bb * b]);
  }
  return axis;
}
