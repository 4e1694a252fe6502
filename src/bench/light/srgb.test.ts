import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { encodedOf, lightTable, linearOf } from './srgb.ts';

// IEC 61966-2-1, computed with scikit-image; the file is rounded to eight decimals.
const rows = readFileSync('checks/fixtures/bench/srgb_lab.csv', 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => line.split(',').map(Number));

it.each(rows)('turns sRGB %d, %d, %d into light as the standard does', (...row) => {
  for (const channel of [0, 1, 2]) {
    const value = (row[channel] as number) / 255;
    const light = row[channel + 3] as number;
    expect(linearOf(value)).toBeCloseTo(light, 7);
    expect(encodedOf(linearOf(value))).toBeCloseTo(value, 12);
    expect(lightTable({ samples: new Uint8Array() })[row[channel] as number]).toBeCloseTo(light, 6);
  }
});
