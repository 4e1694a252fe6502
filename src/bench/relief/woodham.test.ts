import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { solutionOf } from './woodham.ts';

interface Known {
  readonly intensities: readonly number[];
  readonly g: readonly number[];
}

// Woodham 1980, solved with numpy; the file is rounded to ten decimals, allowed 1e-9.
const { lights, exact, least_squares, three_lights } = JSON.parse(
  readFileSync('checks/fixtures/bench/homography_photometric_stereo.json', 'utf8'),
).photometric_stereo as {
  readonly lights: readonly (readonly number[])[];
  readonly exact: readonly Known[];
  readonly least_squares: Known;
  readonly three_lights: Known;
};

it.each([
  ...exact.map((known) => [4, known] as const),
  [4, least_squares] as const,
  [3, three_lights] as const,
])('finds albedo and normal from %d lamps as numpy does', (count, { intensities, g }) => {
  const rows = solutionOf(Float64Array.from(lights.slice(0, count).flat()), count);
  for (let a = 0; a < 3; a++) {
    let sum = 0;
    for (let k = 0; k < count; k++)
      sum += (rows[a * count + k] as number) * (intensities[k] as number);
    expect(Math.abs(sum - (g[a] as number))).toBeLessThan(1e-9);
  }
});
