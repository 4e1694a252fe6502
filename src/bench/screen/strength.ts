import type { Peak } from './peaks.ts';
import { type Spectrum, TILE } from './spectrum.ts';

/** Mean square of the Hann window, along both axes. */
const WINDOW = (3 / 8) ** 2;

/** Variance of the densities, summed over the channels, that one entry of the spectrum stands for. */
function varianceAt({ planes }: Spectrum, bin: number): number {
  const [r, g, b] = planes as [Float64Array, Float64Array, Float64Array];
  const sum = (r[bin] as number) + (g[bin] as number) + (b[bin] as number);
  return sum / (TILE ** 4 * WINDOW);
}

/**
 * How deeply a screen modulates the print: the root mean square of the density of its two
 * fundamental waves, over the three channels.
 */
export function strengthOf(spectrum: Spectrum, { bins }: Peak): number {
  let sum = 0;
  for (const bin of bins) {
    const [u, v] = [bin % TILE, Math.floor(bin / TILE)];
    for (let dv = -1; dv <= 1; dv++)
      for (let du = -1; du <= 1; du++)
        sum += varianceAt(spectrum, ((v + dv) & (TILE - 1)) * TILE + ((u + du) & (TILE - 1)));
  }
  return Math.sqrt((2 * sum) / 3);
}

/**
 * Root mean square of the density between two frequencies, cycles a pixel, without what stands out
 * of its surroundings: grain and scattered dots remain, screens, lines and edges do not.
 */
export function textureOf(spectrum: Spectrum, low: number, high: number): number {
  const [from, to] = [low * TILE, high * TILE];
  const values: number[] = [];
  for (let v = -Math.floor(to); v <= to; v++)
    for (let u = -Math.floor(to); u <= to; u++) {
      const distance = Math.hypot(u, v);
      if (distance < from || distance > to) continue;
      values.push(varianceAt(spectrum, (v & (TILE - 1)) * TILE + (u & (TILE - 1))));
    }
  const sorted = Float64Array.from(values).sort();
  return Math.sqrt(((sorted[sorted.length >> 1] ?? 0) * sorted.length) / 3);
}
