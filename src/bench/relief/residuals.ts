import type { Window } from './window.ts';

/** Blocks to each side over which residuals are taken to hang together. */
const REACH = 3;

/**
 * Mean square of a window's residuals, each already in standard errors, over the blocks chosen;
 * each block's three colours lose one degree of freedom to its own colour.
 */
export function scatterOf(
  { x, lamps }: Window,
  residuals: Float64Array,
  chosen: (block: number) => boolean = () => true,
): number {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < x.length; i++) {
    if (!chosen(i)) continue;
    for (let at = i * lamps * 3; at < (i + 1) * lamps * 3; at++)
      sum += (residuals[at] as number) ** 2;
    count += (lamps - 1) * 3;
  }
  return count === 0 ? 1 : sum / count;
}

/**
 * By how much the variance of a smooth sum over blocks and colours exceeds that of independent
 * ones: the sum of the residuals' correlations over neighbouring blocks and over colours, at least
 * 1. JPEG and demosaicing make pixels alike.
 */
export function clumpingOf(window: Window, residuals: Float64Array, scatter: number): number {
  const { cells, columns, lamps } = window;
  const summed = colourSums(window, residuals);
  let total = 0;
  for (let down = -REACH; down <= REACH; down++)
    for (let right = -REACH; right <= REACH; right++) {
      let sum = 0;
      let count = 0;
      for (let row = Math.max(0, -down); row < columns - Math.max(0, down); row++)
        for (let column = Math.max(0, -right); column < columns - Math.max(0, right); column++) {
          const a = cells[row * columns + column] as number;
          const b = cells[(row + down) * columns + column + right] as number;
          if (a < 0 || b < 0) continue;
          for (let k = 0; k < lamps; k++)
            sum += (summed[a * lamps + k] as number) * (summed[b * lamps + k] as number);
          count += lamps - 1;
        }
      if (count > 0) total += sum / count;
    }
  return Math.max(1, total / (3 * scatter));
}

function colourSums({ x, lamps }: Window, residuals: Float64Array): Float64Array {
  const summed = new Float64Array(x.length * lamps);
  for (let i = 0, at = 0; i < summed.length; i++, at += 3)
    summed[i] =
      (residuals[at] as number) + (residuals[at + 1] as number) + (residuals[at + 2] as number);
  return summed;
}
