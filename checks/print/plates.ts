import { type Picture, pictureOf } from '../../src/bench/index.ts';
import type { Chance } from '../../src/maths/index.ts';
import type { Print } from './print.ts';
import { thresholdOf } from './spot.ts';

/**
 * The scan of an invented print: one-bit plates at twice the scan's resolution, inks multiplied,
 * blurred in light, averaged to pixels, with noise.
 */
export function scanOf(print: Print, chance: Chance): Picture {
  const side = print.size * 2;
  const light = [0, 1, 2].map((channel) =>
    new Float32Array(side * side).fill(print.paper[channel] as number),
  );
  const cover = coverageOf(print);
  for (let ink = 0; ink < 4; ink++) {
    const plate = spread(plateOf(print, cover, ink, side, chance), side);
    light.forEach((plane, channel) => {
      const taken = 1 - ((print.inks[ink] as readonly number[])[channel] as number);
      for (let i = 0; i < plane.length; i++)
        plane[i] = (plane[i] as number) * (1 - taken * (plate[i] as number));
    });
  }
  const scanned = light.map((plane) => halved(blurred(plane, side, print.blurPx * 2), side));
  const samples = new Uint8Array(print.size ** 2 * 3);
  for (let i = 0; i < print.size ** 2; i++)
    for (let c = 0; c < 3; c++) {
      const value = encoded((scanned[c] as Float32Array)[i] as number) * 255;
      samples[i * 3 + c] = Math.round(
        Math.min(255, Math.max(0, value + print.noise * chance.normal())),
      );
    }
  return pictureOf(print.size, print.size, samples);
}

/** The art's coverage by ink at whole points of the plates, looked up at the scan's resolution. */
function coverageOf({ art, size, dpi }: Print): (ink: number, u: number, v: number) => number {
  const margin = Math.ceil(size * 0.2);
  const side = size + 2 * margin;
  const perPx = 25.4 / dpi;
  const raster = new Float32Array(side * side * 4);
  for (let y = 0, i = 0; y < side; y++)
    for (let x = 0; x < side; x++, i += 4)
      raster.set(art((x - margin) * perPx, (y - margin) * perPx), i);
  return (ink, u, v) =>
    raster[(((v >> 1) + margin) * side + (u >> 1) + margin) * 4 + ink] as number;
}

function plateOf(
  print: Print,
  cover: (ink: number, u: number, v: number) => number,
  ink: number,
  side: number,
  chance: Chance,
): Float32Array {
  const plate = new Float32Array(side * side);
  const turn = (print.scanTurnDeg * Math.PI) / 180;
  const perPx = 25.4 / (print.dpi * 2);
  const [dx, dy] = print.shiftsMm[ink] as readonly [number, number];
  const threshold = thresholdOf(print, ink, chance);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const u = Math.round(cos * x + sin * y + dx / perPx);
      const v = Math.round(-sin * x + cos * y + dy / perPx);
      const covered = cover(ink, u, v);
      plate[y * side + x] =
        print.process === 'continuous' ? covered : covered > threshold(u, v) ? 1 : 0;
    }
  return plate;
}

/** Ink spreads a little: the plate averaged over three by three points. */
function spread(plate: Float32Array, side: number): Float32Array {
  return blurred(plate, side, 0.5);
}

function blurred(plane: Float32Array, side: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-0.5 * ((i - reach) / sigma) ** 2),
  );
  const sum = weights.reduce((a, b) => a + b, 0);
  const kernel = Float32Array.from(weights, (w) => w / sum);
  return alongRows(alongRows(plane, side, kernel, reach), side, kernel, reach);
}

/** Convolves the rows and answers the plane with rows and columns exchanged. */
function alongRows(plane: Float32Array, side: number, kernel: Float32Array, reach: number) {
  const out = new Float32Array(plane.length);
  const row = new Float32Array(side + 2 * reach);
  for (let y = 0; y < side; y++) {
    const from = plane.subarray(y * side, (y + 1) * side);
    row.fill(from[0] as number, 0, reach);
    row.set(from, reach);
    row.fill(from[side - 1] as number, reach + side);
    for (let x = 0; x < side; x++) {
      let sum = 0;
      for (let k = 0; k < kernel.length; k++) sum += (kernel[k] as number) * (row[x + k] as number);
      out[x * side + y] = sum;
    }
  }
  return out;
}

function halved(plane: Float32Array, side: number): Float32Array {
  const half = side / 2;
  const out = new Float32Array(half * half);
  for (let y = 0; y < half; y++)
    for (let x = 0; x < half; x++) {
      const i = 2 * y * side + 2 * x;
      out[y * half + x] =
        ((plane[i] as number) +
          (plane[i + 1] as number) +
          (plane[i + side] as number) +
          (plane[i + side + 1] as number)) /
        4;
    }
  return out;
}

function encoded(light: number): number {
  const held = Math.min(1, Math.max(0, light));
  return held <= 0.0031308 ? held * 12.92 : 1.055 * held ** (1 / 2.4) - 0.055;
}
