import { expect, it } from 'vitest';
import { cardMapOf } from '../geometry/card-map.ts';
import type { Corners } from '../geometry/points.ts';
import { depthMapOf } from './depth-map.ts';
import { gridOver } from './grid.ts';
import { shadedRelief } from './shaded.ts';
import type { Slopes } from './slopes.ts';

const size = { width: 420, height: 520 };
const corners: Corners = [
  [40, 60],
  [360, 50],
  [372.5, 450],
  [52.5, 460],
];
const map = cardMapOf(corners, [32, 40], { k1: 0, ...size });

/** Slopes of a card with a Gaussian bowl of 0.1 mm at (12, 20) mm, sigma 1 mm, bent by so much. */
function made(bend: number): Slopes {
  const grid = gridOver(map, size);
  const n = grid.width * grid.height;
  const [right, down, weight] = [0, 1, 2].map(() => new Float32Array(n)) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  const across = (point: readonly number[]) => point as readonly [number, number];
  const unit = Math.hypot(320, 10);
  for (let j = 0, i = 0; j < grid.height; j++)
    for (let k = 0; k < grid.width; k++, i++) {
      const px = grid.left + (k + 0.5) * grid.block - 0.5;
      const py = grid.top + (j + 0.5) * grid.block - 0.5;
      const [x, y] = across(placed(px, py));
      if (x < 0 || y < 0 || x > 32 || y > 40) continue;
      const pull = 0.1 * Math.exp(-((x - 12) ** 2 + (y - 20) ** 2) / 2);
      const [zx, zy] = [pull * (x - 12) + bend * (x - 16), pull * (y - 20)];
      // The picture's axes lie turned by -1.8 degrees on the card.
      right[i] = (zx * 320 + zy * 10) / unit;
      down[i] = (-zx * 10 + zy * 320) / unit;
      weight[i] = 1e6;
    }
  return { grid, right, down, weight, albedo: weight };
}

/** The card point of a pixel, on a card that lies square, turned and ten pixels a millimetre large. */
function placed(px: number, py: number): readonly [number, number] {
  const [u, v] = [px - 40, py - 60];
  const square = 320 * 320 + 10 * 10;
  return [(32 * (320 * u - 10 * v)) / square, (32 * (10 * u + 320 * v)) / square];
}

it.each([0, 0.002])('finds a bowl in slopes, whole card bent by %d a millimetre', (bend) => {
  const { width, stepMm, depthMm, sdMm } = depthMapOf(made(bend), map);
  const at = (x: number, y: number) => Math.floor(y / stepMm) * width + Math.floor(x / stepMm);
  // Means of two slopes a quarter of a millimetre apart: measured 0.099, allowed 4 %.
  expect(Math.abs((depthMm[at(12, 20)] as number) - 0.1)).toBeLessThan(0.004);
  expect(Math.abs((depthMm[at(13.18, 20)] as number) - 0.0528)).toBeLessThan(0.006);
  expect(Math.abs(depthMm[at(24, 31)] as number)).toBeLessThan(0.001);
  expect(sdMm[at(24, 31)]).toBeLessThan(0.002);
  expect(sdMm[at(24, 31)]).toBeGreaterThan(0);
});

it('says that it does not know what lies where no slope is known', () => {
  const slopes = made(0);
  slopes.weight.fill(0, 0, slopes.grid.width * 40);
  const { width, stepMm, sdMm } = depthMapOf(slopes, map);
  expect(sdMm[Math.floor(2 / stepMm) * width + 40]).toBe(Number.POSITIVE_INFINITY);
});

it('shades the far wall of a hollow bright, flat ground alike under every lamp', () => {
  const depth = depthMapOf(made(0), map);
  const grey = (x: number, y: number, lamp: readonly [number, number, number]) =>
    shadedRelief(depth, lamp).samples[
      3 * (Math.floor(y / depth.stepMm) * depth.width + Math.floor(x / depth.stepMm))
    ] as number;
  const fromLeft = [-400, 0, 300] as const;
  const fromBelow = [0, 400, 300] as const;
  expect(grey(13, 20, fromLeft)).toBeGreaterThan(grey(11, 20, fromLeft) + 20);
  expect(grey(12, 19, fromBelow)).toBeGreaterThan(grey(12, 21, fromBelow) + 20);
  expect(Math.abs(grey(24, 31, fromLeft) - grey(24, 31, fromBelow))).toBeLessThanOrEqual(1);
});
