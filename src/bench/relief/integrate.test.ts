import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import { cosineTransform } from './cosine-transform.ts';
import { integrated } from './integrate.ts';

interface Witness {
  readonly weighted: {
    readonly width: number;
    readonly height: number;
    readonly right: readonly number[];
    readonly down: readonly number[];
    readonly weight: readonly number[];
    readonly heights: readonly number[];
  };
  readonly noise: { readonly width: number; readonly height: number; readonly rms: number };
}

// scipy's sparse solver and numpy's FFT, by checks/makers/bench/integrate.py.
const { weighted, noise }: Witness = JSON.parse(
  readFileSync('checks/fixtures/bench/integrate.json', 'utf8'),
);

it('transforms to sums of cosines as defined, and back', () => {
  const random = chance(3);
  const plane = Float64Array.from({ length: 8 * 4 }, () => random.normal());
  const { forth, back } = cosineTransform(8, 4);
  const there = plane.slice();
  forth(there);
  const wave = (k: number, n: number, of: number) => Math.cos((Math.PI * k * (2 * n + 1)) / 2 / of);
  for (let v = 0; v < 4; v++)
    for (let u = 0; u < 8; u++) {
      let sum = 0;
      for (let y = 0; y < 4; y++)
        for (let x = 0; x < 8; x++)
          sum += (plane[y * 8 + x] as number) * wave(u, x, 8) * wave(v, y, 4);
      expect(there[v * 8 + u]).toBeCloseTo(sum, 10);
    }
  back(there);
  there.forEach((value, i) => {
    expect(value).toBeCloseTo(plane[i] as number, 12);
  });
});

it('finds the heights that a sparse solver finds', () => {
  const { width, height } = weighted;
  const [right, down, weight] = [weighted.right, weighted.down, weighted.weight].map((values) =>
    Float64Array.from(values),
  ) as [Float64Array, Float64Array, Float64Array];
  const heights = integrated({ width, height, right, down, weight });
  // Ends at 1e-4 of the first residual; heights reach 2.
  heights.forEach((value, i) => {
    expect(Math.abs(value - (weighted.heights[i] as number))).toBeLessThan(3e-4);
  });
});

it('carries noise of the slopes to heights as numpy does', () => {
  const { width, height, rms } = noise;
  const random = chance(8);
  let sum = 0;
  let count = 0;
  for (let draw = 0; draw < 30; draw++) {
    const one = () => Float64Array.from({ length: width * height }, () => random.normal());
    const weight = new Float64Array(width * height).fill(1);
    const heights = integrated({ width, height, right: one(), down: one(), weight });
    for (let y = height / 4; y < (3 * height) / 4; y++)
      for (let x = width / 4; x < (3 * width) / 4; x++, count++)
        sum += (heights[y * width + x] as number) ** 2;
  }
  // Few waves carry most of it: thirty draws scatter by 3 %, allowed four times that.
  expect(Math.abs(Math.sqrt(sum / count) / rms - 1)).toBeLessThan(0.12);
});
