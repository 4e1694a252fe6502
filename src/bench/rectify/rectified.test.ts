import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cardMapOf, pixelOf } from '../geometry/card-map.ts';
import type { Corners, PointMm, SizeMm } from '../geometry/points.ts';
import { encodedOf, LUMINANCE } from '../light/srgb.ts';
import { pictureOf } from '../picture.ts';
import { coloursView, lightView, rectified, rectifiedView } from './rectified.ts';
import { rowWalkOf } from './rows.ts';
import { cardViewOf, type View, viewOf, viewPixelOf, viewPointOf } from './view.ts';

interface Case {
  readonly name: string;
  readonly k1: number;
  readonly sizeMm: SizeMm;
  readonly corners: Corners;
  readonly fromMm: PointMm;
  readonly pxPerMm: number;
  readonly columns: number;
  readonly rows: number;
  readonly at: readonly (readonly [number, number])[];
  readonly light: readonly (readonly [number, number, number])[];
}

// OpenCV 4.6.0, by checks/makers/bench/rectify.py; numbers rounded to seven decimals.
const witness: {
  readonly width: number;
  readonly height: number;
  readonly cases: readonly Case[];
  readonly shrunk: Pick<Case, 'corners' | 'sizeMm' | 'pxPerMm' | 'light'>;
} = JSON.parse(readFileSync('checks/fixtures/bench/rectify.json', 'utf8'));

const { width, height } = witness;

/** The picture that the maker draws, from whole numbers alone. */
function drawn() {
  const samples = new Uint8Array(width * height * 3);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      samples[i++] = (x * 7 + y * 3) % 256;
      samples[i++] = (x * x + y * 11) % 256;
      samples[i++] = (x * y + 40) % 256;
    }
  return pictureOf(width, height, samples);
}

function mapAndView({ corners, sizeMm, k1, fromMm, pxPerMm, columns, rows }: Case) {
  const far: PointMm = [fromMm[0] + columns / pxPerMm, fromMm[1] + rows / pxPerMm];
  const view = viewOf(fromMm, far, [1 / pxPerMm, 1 / pxPerMm]);
  return { map: cardMapOf(corners, sizeMm, { k1, width, height }), view };
}

/** The same view, so fine that no pixel is a mean of several samples. */
const single = ({ originMm, stepMm, width, height }: View, i: number): View => ({
  originMm: viewPointOf({ originMm, stepMm, width, height }, [i % width, Math.floor(i / width)]),
  stepMm: [stepMm[0] / 50, stepMm[1] / 50],
  width: 1,
  height: 1,
});

describe.each(witness.cases)('a view of a card, $name', (given) => {
  const { map, view } = mapAndView(given);

  it('walks over the places where OpenCV looks', () => {
    const walk = rowWalkOf(map);
    const [xs, ys] = [new Float64Array(view.width), new Float64Array(view.width)];
    for (let row = 0; row < view.height; row++) {
      const [x0, y] = viewPointOf(view, [0, row]);
      walk(x0, view.stepMm[0], y, xs, ys);
      for (let k = 0; k < view.width; k++) {
        const [x, y] = given.at[row * view.width + k] as readonly [number, number];
        // The looked-up bow: measured 5.5e-6 pixels, allowed 2e-5.
        expect(Math.hypot((xs[k] as number) - x, (ys[k] as number) - y)).toBeLessThan(2e-5);
      }
    }
  });

  it('finds the light that OpenCV finds there', () => {
    given.light.forEach((expected, i) => {
      const found = coloursView(drawn(), map, single(view, i));
      const grey = lightView(drawn(), map, single(view, i)).values[0] as number;
      // Neighbours differ by up to the whole range, so that the places' 5e-6 pixels show:
      // measured 5.4e-6, allowed 2e-5.
      expected.forEach((value, channel) => {
        expect(Math.abs((found[channel] as number) - value)).toBeLessThan(2e-5);
      });
      const luminance = expected.reduce((sum, value, j) => sum + value * (LUMINANCE[j] ?? 0), 0);
      expect(Math.abs(grey - luminance)).toBeLessThan(2e-5);
    });
  });

  it('codes that light as the picture is coded', () => {
    given.light.forEach((expected, i) => {
      const { samples } = rectifiedView(drawn(), map, single(view, i));
      expected.forEach((value, channel) => {
        // Half a step of rounding, and the light's own 2e-5, up to 13 times as steep in the dark.
        const error = Math.abs((samples[channel] as number) - encodedOf(value) * 255);
        expect(error).toBeLessThan(0.5 + 2e-5 * 12.92 * 255);
      });
    });
  });
});

describe('a view coarser than the picture', () => {
  const { corners, sizeMm, pxPerMm, light } = witness.shrunk;
  const map = cardMapOf(corners, sizeMm, { k1: 0, width, height });

  it('shows the mean light of the pixels that each of its own covers, as OpenCV does', () => {
    const found = coloursView(drawn(), map, cardViewOf(sizeMm, pxPerMm, 0));
    light.flat().forEach((value, i) => {
      // Single precision in sums of nine: measured 2e-7, allowed 1e-6.
      expect(Math.abs((found[i] as number) - value)).toBeLessThan(1e-6);
    });
  });
});

describe('the rectified card', () => {
  const map = cardMapOf(
    [
      [7, 9],
      [50, 6],
      [55, 75],
      [5, 70],
    ],
    [63, 88],
    { k1: 0.02, width, height },
  );

  it('has its margin around it, a point of the card where the view says', () => {
    const picture = rectified(drawn(), map, 2, 1.5);
    expect([picture.width, picture.height]).toEqual([132, 182]);
    const view = cardViewOf([63, 88], 2, 1.5);
    expect(viewPixelOf(view, [0, 0])).toEqual([2.5, 2.5]);
    const back = viewPointOf(view, viewPixelOf(view, [12.3, 45.6]));
    expect(back[0]).toBeCloseTo(12.3, 12);
    expect(back[1]).toBeCloseTo(45.6, 12);
  });

  it('keeps 16 bits where the picture has them', () => {
    const { samples } = drawn();
    const deep = pictureOf(
      width,
      height,
      Uint16Array.from(samples, (value) => value * 257),
    );
    const eight = rectified(drawn(), map, 1, 0);
    const sixteen = rectified(deep, map, 1, 0);
    expect(sixteen.samples).toBeInstanceOf(Uint16Array);
    sixteen.samples.forEach((value, i) => {
      // Half a step of rounding on each side.
      expect(Math.abs(value / 257 - (eight.samples[i] as number))).toBeLessThan(0.51);
    });
  });

  it('repeats the rim where the margin leaves the picture', () => {
    const { samples } = rectified(drawn(), map, 1, 40);
    expect(samples.slice(0, 3)).toEqual(drawn().samples.slice(0, 3));
  });

  it('keeps to the map in a large picture', () => {
    const big = cardMapOf(
      [
        [380.2, 392],
        [2757.6, 455.1],
        [2656.7, 3391.3],
        [281.1, 3309.5],
      ],
      [63, 88],
      { k1: -0.05, width: 3000, height: 4000 },
    );
    const walk = rowWalkOf(big);
    const [xs, ys] = [new Float64Array(60), new Float64Array(60)];
    for (let y = 0; y < 88; y += 2) {
      walk(0.5, 1, y, xs, ys);
      xs.forEach((x, k) => {
        const [u, v] = pixelOf(big, [0.5 + k, y]);
        // Measured 7.4e-5 pixels, allowed 5e-4.
        expect(Math.hypot(x - u, (ys[k] as number) - v)).toBeLessThan(5e-4);
      });
    }
  });

  it('refuses a view without pixels', () => {
    expect(() => viewOf([0, 0], [0.1, 5], [1, 1])).toThrow(RangeError);
  });
});
