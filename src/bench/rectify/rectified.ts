import type { CardMap, Projection } from '../geometry/card-map.ts';
import { encodedOf, LUMINANCE, lightTable } from '../light/srgb.ts';
import type { Picture, Plane } from '../picture.ts';
import { type RowSampler, sampleRows } from './sampling.ts';
import { cardViewOf, type View } from './view.ts';

/**
 * The card as seen straight down, `pxPerMm` pixels a millimetre, with a margin around it. Beyond the
 * picture's rim its outermost pixels are repeated.
 * @throws RangeError where no pixel would be left.
 */
export function rectified(
  picture: Picture,
  map: CardMap,
  pxPerMm: number,
  marginMm: number,
): Picture {
  return rectifiedView(picture, map, cardViewOf(map.sizeMm, pxPerMm, marginMm));
}

/** A part of the card as seen straight down, sampled in linear light and coded as the picture is. */
export function rectifiedView(picture: Picture, map: Projection, view: View): Picture {
  const { width, height } = view;
  const eight = picture.samples instanceof Uint8Array;
  const top = eight ? 255 : 65_535;
  const samples = eight ? new Uint8Array(width * height * 3) : new Uint16Array(width * height * 3);
  const codes = codeTable();
  sampleRows(map, view, 3, coloursOf(picture), (row, sums, share) => {
    const start = row * width * 3;
    const scale = share * (codes.length - 2);
    for (let i = 0; i < sums.length; i++) {
      const at = (sums[i] as number) * scale;
      const low = codes[at | 0] as number;
      const code = low + ((codes[(at | 0) + 1] as number) - low) * (at - (at | 0));
      samples[start + i] = code * top + 0.5;
    }
  });
  return { width, height, samples, dpi: null };
}

/** Relative luminance in linear light, 0 to 1, of a part of the card as seen straight down. */
export function lightView(picture: Picture, map: Projection, view: View): Plane {
  const values = new Float32Array(view.width * view.height);
  sampleRows(map, view, 1, luminancesOf(picture), (row, sums, share) => {
    const start = row * view.width;
    for (let i = 0; i < sums.length; i++) values[start + i] = (sums[i] as number) * share;
  });
  return { width: view.width, height: view.height, values };
}

/** Linear light of red, green and blue, 0 to 1, interleaved, of a part of the card seen straight down. */
export function coloursView(picture: Picture, map: Projection, view: View): Float32Array {
  const values = new Float32Array(view.width * view.height * 3);
  sampleRows(map, view, 3, coloursOf(picture), (row, sums, share) => {
    const start = row * view.width * 3;
    for (let i = 0; i < sums.length; i++) values[start + i] = (sums[i] as number) * share;
  });
  return values;
}

function coloursOf({ width, height, samples }: Picture): RowSampler {
  const light = lightTable({ samples });
  return (xs, ys, sums) => {
    for (let k = 0, s = 0; k < xs.length; k++, s += 3) {
      const x = within(xs[k] as number, width);
      const y = within(ys[k] as number, height);
      const left = before(x, width);
      const top = before(y, height);
      const fx = x - left;
      const d = fx * (y - top);
      const c = y - top - d;
      const b = fx - d;
      const a = 1 - fx - c;
      const p = (top * width + left) * 3;
      const q = p + width * 3;
      for (let i = 0; i < 3; i++)
        sums[s + i] =
          (sums[s + i] as number) +
          a * (light[samples[p + i] as number] as number) +
          b * (light[samples[p + 3 + i] as number] as number) +
          c * (light[samples[q + i] as number] as number) +
          d * (light[samples[q + 3 + i] as number] as number);
    }
  };
}

function luminancesOf({ width, height, samples }: Picture): RowSampler {
  const light = lightTable({ samples });
  const [red, green, blue] = LUMINANCE;
  const at = (p: number) =>
    red * (light[samples[p] as number] as number) +
    green * (light[samples[p + 1] as number] as number) +
    blue * (light[samples[p + 2] as number] as number);
  return (xs, ys, sums) => {
    for (let k = 0; k < xs.length; k++) {
      const x = within(xs[k] as number, width);
      const y = within(ys[k] as number, height);
      const left = before(x, width);
      const top = before(y, height);
      const fx = x - left;
      const fy = y - top;
      const p = (top * width + left) * 3;
      const q = p + width * 3;
      const above = (1 - fx) * at(p) + fx * at(p + 3);
      sums[k] = (sums[k] as number) + above * (1 - fy) + fy * ((1 - fx) * at(q) + fx * at(q + 3));
    }
  };
}

/** The pixel left of or above a place, one whose neighbour is in the picture too. */
function before(at: number, size: number): number {
  const whole = at | 0;
  return whole < size - 1 ? whole : size - 2;
}

function within(at: number, size: number): number {
  return at < 0 ? 0 : Math.min(at, size - 1);
}

let codes: Float32Array | undefined;

/** sRGB values of 65,536 even steps of light and one beyond. */
function codeTable(): Float32Array {
  codes ??= Float32Array.from({ length: 65_537 }, (_, i) => encodedOf(Math.min(1, i / 65_535)));
  return codes;
}
