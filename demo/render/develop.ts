import { chance } from '../../src/maths/index.ts';
import { codeOf } from './light.ts';
import type { Develop } from './scene.ts';

/** Light on the sensor to samples of sRGB: blur, noise, curve, sharpening; overwrites the light. */
export function developed(
  light: Float32Array,
  width: number,
  height: number,
  how: Develop,
  seed: number,
): Uint8Array {
  if (how.discPx > 0) disc(light, width, height, how.discPx);
  if (how.blurPx > 0) gaussian(light, width, height, how.blurPx);
  addNoise(light, how, seed);
  for (let i = 0; i < light.length; i++) light[i] = curved(codeAt(light[i]!), how.contrastCurve);
  if (how.halo > 0) sharpen(light, width, height, how.halo);
  const samples = new Uint8Array(light.length);
  for (let i = 0; i < light.length; i++)
    samples[i] = Math.max(0, Math.min(255, Math.round(255 * light[i]!)));
  return samples;
}

const CODES = Float32Array.from({ length: 16_386 }, (_, i) => codeOf(i / 16_384));

function codeAt(light: number): number {
  if (!(light > 0)) return 0;
  if (light >= 1) return 1;
  if (light < 0.004) return codeOf(light);
  const u = light * 16_384;
  const i = Math.floor(u);
  return CODES[i]! + (CODES[i + 1]! - CODES[i]!) * (u - i);
}

function curved(code: number, amount: number): number {
  return code + amount * code * (1 - code) * (2 * code - 1) * 2;
}

/** Noise of the sensor: its spread in light is √(read² + shot² · light). */
function addNoise(light: Float32Array, { readNoise, shotNoise }: Develop, seed: number): void {
  const random = chance(seed);
  const drawn = Float32Array.from({ length: 1 << 16 }, () => random.normal());
  let state = Math.floor(random.uniform() * 4_294_967_295) | 1;
  for (let i = 0; i < light.length; i++) {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    const spread = Math.sqrt(
      readNoise * readNoise + shotNoise * shotNoise * Math.max(0, light[i]!),
    );
    light[i] = light[i]! + spread * drawn[state & 0xffff]!;
  }
}

/** Blurs three interleaved channels in place by a Gaussian of that standard deviation. */
export function gaussian(values: Float32Array, width: number, height: number, sigma: number): void {
  const reach = Math.max(1, Math.ceil(3.2 * sigma));
  const kernel = Float32Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = kernel.reduce((a, b) => a + b, 0);
  for (let i = 0; i < kernel.length; i++) kernel[i] = kernel[i]! / sum;
  const row = new Float32Array((width + 2 * reach) * 3);
  for (let y = 0; y < height; y++) {
    const from = y * width * 3;
    padded(row, values.subarray(from, from + width * 3), reach);
    for (let i = 0; i < width * 3; i++) {
      let total = 0;
      for (let k = 0, j = i; k < kernel.length; k++, j += 3) total += kernel[k]! * row[j]!;
      values[from + i] = total;
    }
  }
  columns(values, width, height, kernel, reach);
}

function padded(row: Float32Array, line: Float32Array, reach: number): void {
  row.set(line, reach * 3);
  for (let k = 0; k < reach; k++)
    for (let c = 0; c < 3; c++) {
      row[3 * k + c] = line[c]!;
      row[row.length - 3 * (k + 1) + c] = line[line.length - 3 + c]!;
    }
}

/** The same downwards, keeping the rows that are still to be read in a ring. */
function columns(
  values: Float32Array,
  width: number,
  height: number,
  kernel: Float32Array,
  reach: number,
): void {
  const n = width * 3;
  const size = kernel.length;
  const ring = Array.from({ length: size }, () => new Float32Array(n));
  const load = (y: number) => {
    const from = Math.max(0, Math.min(height - 1, y)) * n;
    ring[(y + 2 * size) % size]!.set(values.subarray(from, from + n));
  };
  for (let y = -reach; y < reach; y++) load(y);
  const out = new Float32Array(n);
  for (let y = 0; y < height; y++) {
    load(y + reach);
    out.fill(0);
    for (let k = 0; k < size; k++) {
      const weight = kernel[k]!;
      const row = ring[(y - reach + k + 2 * size) % size]!;
      for (let i = 0; i < n; i++) out[i] = out[i]! + weight * row[i]!;
    }
    values.set(out, y * n);
  }
}

/** Blurs by an even disc, as a lens out of focus does; its rim covers pixels in part. */
function disc(values: Float32Array, width: number, height: number, radius: number): void {
  const reach = Math.ceil(radius);
  const copy = values.slice();
  values.fill(0);
  let total = 0;
  const taps: [number, number, number][] = [];
  for (let dy = -reach; dy <= reach; dy++)
    for (let dx = -reach; dx <= reach; dx++) {
      const weight = Math.max(0, Math.min(1, radius + 0.5 - Math.hypot(dx, dy)));
      if (weight > 0) taps.push([dx, dy, weight]);
      total += weight;
    }
  for (const [dx, dy, weight] of taps)
    for (let y = 0; y < height; y++) {
      const from = Math.max(0, Math.min(height - 1, y + dy)) * width;
      for (let x = 0; x < width; x++) {
        const at = 3 * (from + Math.max(0, Math.min(width - 1, x + dx)));
        const k = 3 * (y * width + x);
        const w = weight / total;
        values[k] = values[k]! + w * copy[at]!;
        values[k + 1] = values[k + 1]! + w * copy[at + 1]!;
        values[k + 2] = values[k + 2]! + w * copy[at + 2]!;
      }
    }
}

/** Adds what a blur takes away, on the coded samples, so that edges get halos. */
function sharpen(codes: Float32Array, width: number, height: number, amount: number): void {
  const soft = codes.slice();
  gaussian(soft, width, height, 1.4);
  for (let i = 0; i < codes.length; i++) codes[i] = codes[i]! + amount * (codes[i]! - soft[i]!);
}
