import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { pictureOf } from '../picture.ts';
import { spectrumOf, TILE } from './spectrum.ts';

// Made by checks/makers/screen/spectrum.py with numpy's transform.
const { rows } = JSON.parse(readFileSync('checks/fixtures/bench/screen_spectrum.json', 'utf8')) as {
  rows: readonly { v: number; u: number; values: readonly number[] }[];
};

function madePicture() {
  const [width, height] = [700, 600];
  const samples = new Uint8Array(width * height * 3);
  for (let y = 0, i = 0; y < height; y++)
    for (let x = 0; x < width; x++, i += 3) {
      samples[i] = ((x * 7 + y * 13 + x * y) % 251) + 3;
      samples[i + 1] = ((x * x + 3 * y) % 240) + 9;
      samples[i + 2] = ((5 * x + Math.floor((y * y) / 7)) % 200) + 50;
    }
  return pictureOf(width, height, samples);
}

it('averages the cross-spectra of tiles as numpy does', () => {
  const { planes } = spectrumOf(madePicture(), 1, 0.45);
  for (const { v, u, values } of rows)
    values.forEach((value, i) => {
      // Densities are kept in single precision: measured 3e-6 of the largest entry, allowed 1e-4.
      const found = planes[i]?.[v * TILE + u] as number;
      expect(Math.abs(found - value)).toBeLessThan(1e-4 * Math.max(...values));
    });
});

it('refuses a picture smaller than a tile', () => {
  const small = pictureOf(200, 300, new Uint8Array(200 * 300 * 3));
  expect(() => spectrumOf(small, 1, 0.3)).toThrow(RangeError);
});
