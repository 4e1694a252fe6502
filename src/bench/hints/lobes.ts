import { quantileOf } from '../../maths/index.ts';
import type { Plane } from '../picture.ts';
import { PX_PER_MM } from './relit-card.ts';

/** How strongly each place looks like a hollow of one width, a light lobe beside a dark one. */
export interface Lobes {
  readonly widthMm: number;
  /** Standard deviation of the bowl, pixels. */
  readonly sigma: number;
  /** Response across and down: it points to where the dark lobe gives way to the light one. */
  readonly across: Float32Array;
  readonly down: Float32Array;
  /** Standard deviation of either over the card, by its median. */
  readonly sd: number;
}

/** Widths of hollows that are looked for, at half their depth, mm. */
const WIDTHS = [0.8, 1.2, 1.8, 2.7] as const;
/** Width of a Gaussian at half its height, in standard deviations. */
const FULL_WIDTH = 2.355;

/** Matched filters (`turin:1960`) for the slopes of Gaussian bowls, along both axes (`freeman:1991`). */
export function lobesOf(even: Plane): readonly Lobes[] {
  return WIDTHS.map((widthMm) => {
    const sigma = (widthMm * PX_PER_MM) / FULL_WIDTH;
    const { bell, slope } = kernelsOf(sigma);
    const across = filtered(filtered(even.values, even, bell, 'down'), even, slope, 'across');
    const down = filtered(filtered(even.values, even, bell, 'across'), even, slope, 'down');
    const sizes: number[] = [];
    for (let i = 0; i < across.length; i += 23)
      sizes.push(Math.abs(across[i] as number), Math.abs(down[i] as number));
    return { widthMm, sigma, across, down, sd: Math.max(quantileOf(sizes, 0.5) / 0.6745, 0.05) };
  });
}

/** A bell and its slope, scaled so that white noise of one keeps its standard deviation in both together. */
function kernelsOf(sigma: number): { bell: Float64Array; slope: Float64Array } {
  const reach = Math.ceil(3 * sigma);
  const at = Array.from({ length: 2 * reach + 1 }, (_, i) => (i - reach) / sigma);
  const bell = at.map((u) => Math.exp((-u * u) / 2));
  const slope = at.map((u, i) => u * (bell[i] as number));
  return { bell: unit(bell), slope: unit(slope) };
}

function unit(values: readonly number[]): Float64Array {
  const norm = Math.hypot(...values);
  return Float64Array.from(values, (value) => value / norm);
}

function filtered(
  from: Float32Array,
  { width, height }: Plane,
  kernel: Float64Array,
  way: 'across' | 'down',
): Float32Array {
  const reach = kernel.length >> 1;
  const out = new Float32Array(from.length);
  const step = way === 'across' ? 1 : width;
  const [mx, my] = way === 'across' ? [reach, 0] : [0, reach];
  for (let y = my; y < height - my; y++)
    for (let x = mx, i = y * width + mx; x < width - mx; x++, i++) {
      let sum = 0;
      for (let k = 0, j = i - reach * step; k < kernel.length; k++, j += step)
        sum += (kernel[k] as number) * (from[j] as number);
      out[i] = sum;
    }
  return out;
}
