import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardMapOf, cardPointOf, pixelOf } from './card-map.ts';
import { carried, type Homography, homographyOf, inverseOf } from './homography.ts';
import { bowed, straightened } from './lens.ts';
import type { Corners } from './points.ts';

interface Case {
  readonly name: string;
  readonly src: readonly (readonly [number, number])[];
  readonly dst: readonly (readonly [number, number])[];
  readonly H_row_major: Homography;
  readonly inverse: Homography;
  readonly probe: readonly { readonly p: [number, number]; readonly maps_to: [number, number] }[];
}

// Hartley and Zisserman 2003, algorithm 4.2, solved with numpy and compared with OpenCV.
const cases: readonly Case[] = JSON.parse(
  readFileSync('checks/fixtures/bench/homography_photometric_stereo.json', 'utf8'),
).homography_4pt;

describe('the homography of four points', () => {
  it.each(cases)('agrees with numpy: $name', ({ src, dst, H_row_major, inverse, probe }) => {
    const h = homographyOf(src, dst);
    // The file is rounded to ten decimals: 1e-9 leaves room for that alone.
    h.forEach((value, i) => {
      expect(value).toBeCloseTo(H_row_major[i] as number, 8);
    });
    inverseOf(h).forEach((value, i) => {
      expect(value).toBeCloseTo(inverse[i] as number, 8);
    });
    for (const { p, maps_to } of probe) {
      const [x, y] = carried(h, p);
      expect(x).toBeCloseTo(maps_to[0], 7);
      expect(y).toBeCloseTo(maps_to[1], 7);
    }
  });

  it('refuses three points on a line', () => {
    const line: [number, number][] = [
      [0, 0],
      [1, 1],
      [2, 2],
      [0, 5],
    ];
    expect(() => homographyOf(line, line)).toThrow(RangeError);
  });
});

describe('a lens', () => {
  it('bows back what it straightened', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.2, max: 0.2, noNaN: true }),
        fc.tuple(
          fc.double({ min: 0, max: 1999, noNaN: true }),
          fc.double({ min: 0, max: 2999, noNaN: true }),
        ),
        (k1, point) => {
          const lens = { k1, width: 2000, height: 3000 };
          const [x, y] = bowed(lens, straightened(lens, point));
          // Six steps of Newton: measured 4e-9 pixels at worst over this range, allowed 1e-6.
          expect(Math.hypot(x - point[0], y - point[1])).toBeLessThan(1e-6);
        },
      ),
    );
  });
});

describe('the map of a card', () => {
  it('puts the corners of the truth of a rendered picture where they were seen', () => {
    const corners: Corners = [
      [380.2, 392],
      [1757.6, 455.1],
      [1656.7, 2391.3],
      [281.1, 2309.5],
    ];
    const map = cardMapOf(corners, [63, 88], { k1: 0.0014, width: 1950, height: 2600 });
    expect(cardPointOf(map, corners[2])[0]).toBeCloseTo(63, 9);
    expect(cardPointOf(map, corners[2])[1]).toBeCloseTo(88, 9);
    const [x, y] = pixelOf(map, cardPointOf(map, [1000, 1200]));
    expect(x).toBeCloseTo(1000, 6);
    expect(y).toBeCloseTo(1200, 6);
  });
});
