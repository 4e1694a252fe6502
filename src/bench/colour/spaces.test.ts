import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { linearOf } from '../light/srgb.ts';
import { ciede2000, type Lab } from './ciede2000.ts';
import {
  adaptation,
  D50,
  D65,
  labOfLight,
  labOfXyz,
  lightOfLab,
  lightOfXyz,
  times,
  xyzOfLab,
  xyzOfLight,
} from './spaces.ts';

const rowsOf = (name: string) =>
  readFileSync(`checks/fixtures/bench/${name}`, 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(',').map(Number));

const apart = (found: readonly number[], wanted: readonly number[]) =>
  Math.max(...found.map((value, i) => Math.abs(value - (wanted[i] as number))));

describe('CIEDE2000', () => {
  // Table 1 of Sharma, Wu and Dalal 2005, to its four decimals.
  it.each(rowsOf('ciede2000_sharma_2005.csv'))(
    'pair %d',
    (_, L1, a1, b1, L2, a2, b2, published) => {
      const [one, other] = [
        [L1, a1, b1],
        [L2, a2, b2],
      ] as unknown as [Lab, Lab];
      expect(ciede2000(one, other)).toBeCloseTo(published as number, 4);
      expect(ciede2000(other, one)).toBeCloseTo(ciede2000(one, other), 12);
      expect(ciede2000(one, one)).toBe(0);
    },
  );
});

describe('spaces', () => {
  // scikit-image rounds its matrix and its white otherwise: X, Y, Z and Lab differ by up to 0.005.
  it.each(rowsOf('srgb_lab.csv'))('sRGB %d, %d, %d', (...row) => {
    const light = [0, 1, 2].map((i) => linearOf((row[i] as number) / 255)) as unknown as Lab;
    const xyz = xyzOfLight(light);
    expect(apart(xyz, row.slice(6, 9))).toBeLessThan(1e-5);
    expect(apart(labOfXyz(xyz, D65), row.slice(9, 12))).toBeLessThan(1e-2);
    expect(apart(lightOfXyz(xyz), light)).toBeLessThan(1e-12);
    expect(apart(xyzOfLab(labOfXyz(xyz, D65), D65), xyz)).toBeLessThan(1e-12);
    expect(apart(lightOfLab(labOfLight(light)), light)).toBeLessThan(1e-12);
  });

  it('carries daylight to the white of the graphic trade as Bradford does', () => {
    // Lindbloom's published matrix for D65 to D50, to its seven decimals; his whites are these.
    const published = [
      [1.0478112, 0.0228866, -0.050127],
      [0.0295424, 0.9904844, -0.0170491],
      [-0.0092345, 0.0150436, 0.7521316],
    ];
    const found = adaptation(D65, D50);
    for (const i of [0, 1, 2] as const)
      expect(apart(found[i], published[i] as number[])).toBeLessThan(1e-6);
    expect(apart(times(found, D65), D50)).toBeLessThan(1e-12);
    expect(apart(labOfLight([1, 1, 1]), [100, 0, 0])).toBeLessThan(0.01);
  });
});
