import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { Corners } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { type Picture, pictureOf } from '../picture.ts';
import { loneScratchesOf } from './lone-scratches.ts';
import type { Placed } from './scratch-marks.ts';
import { scratchesOf } from './scratches.ts';

const SIZE = [63, 88] as const;
const PX_PER_MM = 12;
const [WIDTH, HEIGHT] = [SIZE[0] * PX_PER_MM + 48, SIZE[1] * PX_PER_MM + 48];
const CORNERS: Corners = [
  [24, 24],
  [24 + SIZE[0] * PX_PER_MM, 24],
  [24 + SIZE[0] * PX_PER_MM, 24 + SIZE[1] * PX_PER_MM],
  [24, 24 + SIZE[1] * PX_PER_MM],
];
const random = chance(11);
const NORMALS = Float32Array.from({ length: 1 << 16 }, () => random.normal());

interface Groove {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  /** Each flank differs from the light around by this share. */
  readonly depth: number;
}

interface Light {
  readonly low: boolean;
  readonly grooves?: readonly Groove[];
  readonly noise?: number;
  readonly mirrored?: boolean;
  readonly shiftPx?: number;
}

/** A printed card with lines, discs and letters of many sizes, lit softly or from the right. */
function lit({ low, grooves = [], noise = 0.006, mirrored, shiftPx = 0 }: Light): Picture {
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  const salt = low ? 12_345 : 777;
  for (let y = 0; y < HEIGHT; y++)
    for (let x = 0; x < WIDTH; x++) {
      const px = (mirrored ? WIDTH - 1 - x : x) - shiftPx;
      const [u, v] = [(px - 24) / PX_PER_MM, (y - 24) / PX_PER_MM];
      const shade = low ? 0.5 + (0.4 * u) / SIZE[0] + flanks(u, v, grooves) : 1;
      const veil = low ? 0.01 : 0;
      const at = 3 * (y * WIDTH + x);
      for (const c of [0, 1, 2]) {
        const print = mirrored || shiftPx ? printed(u, v, c) : (PRINT[at + c] as number);
        const value = encodedOf((print + veil) * shade);
        const grain = noise * (NORMALS[(at * 31 + c * 7919 + salt + (at >> 7)) & 65_535] as number);
        samples[at + c] = Math.round(255 * Math.min(1, Math.max(0, value + grain)));
      }
    }
  return pictureOf(WIDTH, HEIGHT, samples);
}

/** The print at every pixel of the picture that is neither mirrored nor shifted, drawn once. */
const PRINT = Float32Array.from({ length: WIDTH * HEIGHT * 3 }, (_, at) => {
  const pixel = Math.floor(at / 3);
  return printed(
    ((pixel % WIDTH) - 24) / PX_PER_MM,
    (Math.floor(pixel / WIDTH) - 24) / PX_PER_MM,
    at % 3,
  );
});

/** Soft steps, so that no sample falls between two pixels. */
function step(distance: number): number {
  return 1 / (1 + Math.exp(-20 * distance));
}

function printed(u: number, v: number, c: number): number {
  const ring = step(Math.sin(2 * Math.hypot(u - 30, v - 50)) - 0.6);
  const disc = step(5 - Math.hypot(u - 40 - c, v - 25));
  const rule = step(0.1 - Math.abs(v - 70)) + step(0.1 - Math.abs(u - 3));
  return 0.05 + 0.04 * c + 0.2 * ring + 0.25 * disc * (1 - ring) + 0.3 * Math.min(1, rule);
}

function flanks(u: number, v: number, grooves: readonly Groove[]): number {
  return grooves.reduce((sum, { from, to, depth }) => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(dx, dy);
    const along = ((u - from[0]) * dx + (v - from[1]) * dy) / length;
    if (along < 0 || along > length) return sum;
    const across = ((u - from[0]) * dy - (v - from[1]) * dx) / length / 0.07;
    return sum + depth * across * Math.exp(0.5 - (across * across) / 2);
  }, 0);
}

const placed = (picture: Picture): Placed => ({
  picture,
  map: cardMapOf(CORNERS, SIZE, { k1: 0, width: WIDTH, height: HEIGHT }),
});
const soft = placed(lit({ low: false }));
const seen = (light: Partial<Light>, twin = soft) =>
  scratchesOf(placed(lit({ low: true, ...light })), twin, null);
const sure = (light: Partial<Light>, twin = soft) =>
  seen(light, twin).defects.filter(({ p }) => p >= 0.5);

const long: Groove = { from: [12, 40], to: [25, 58], depth: 0.15 };
const short: Groove = { from: [45, 60], to: [50, 57], depth: 0.15 };
const faint: Groove = { from: [12, 12], to: [28, 18], depth: 0.05 };

describe('scratches under a low lamp', () => {
  const found = sure({ grooves: [long, short] });

  it('finds each with its place and length', () => {
    expect(found.length).toBe(2);
    for (const { from, to } of [long, short]) {
      const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const near = found.find(
        ({ centreMm: [x, y] }) => Math.hypot(x - middle[0], y - middle[1]) < 2,
      );
      // Ends lie where half a piece of 1.7 mm has left the line: measured 0.06 and 0.22 mm, allowed 0.5.
      expect(Math.abs((near?.lengthMm ?? 0) - length)).toBeLessThan(0.5);
      for (const point of near?.polygonMm ?? []) {
        const aside =
          (point[0] - from[0]) * (to[1] - from[1]) - (point[1] - from[1]) * (to[0] - from[0]);
        // Pixels of the grid are 0.1 mm: measured 0.07 mm, allowed 0.15.
        expect(Math.abs(aside / length)).toBeLessThan(0.15);
      }
    }
  });

  it('stays quiet where there is none, printed lines and rings notwithstanding', () => {
    expect(sure({})).toEqual([]);
    expect(sure({ noise: 0.02 })).toEqual([]);
  });

  it('stays quiet on two pictures that are shifted against each other', () => {
    expect(sure({ shiftPx: 0.6 })).toEqual([]);
    expect(sure({ shiftPx: 0.6, grooves: [long] }).length).toBe(1);
  });

  it('swaps left and right with mirrored pictures', () => {
    const twin = placed(lit({ low: false, mirrored: true }));
    const [mirrored] = sure({ grooves: [long], mirrored: true }, twin);
    const one = found.find(({ boxMm }) => boxMm[2] < 40);
    // A pixel of the grid: measured 0.06 mm, allowed 0.3.
    expect(Math.abs(SIZE[0] - (mirrored?.boxMm[2] ?? 0) - (one?.boxMm[0] ?? 0))).toBeLessThan(0.3);
    expect(Math.abs((mirrored?.lengthMm ?? 0) - (one?.lengthMm ?? 0))).toBeLessThan(0.3);
  });

  it('is never surer under more noise', () => {
    const chances = [0.006, 0.015, 0.04].map((noise) => {
      const twin = placed(lit({ low: false, noise }));
      return Math.max(0, ...seen({ grooves: [faint], noise }, twin).defects.map(({ p }) => p));
    });
    expect(chances[0]).toBeGreaterThan(0.5);
    expect(chances[1]).toBeLessThanOrEqual(chances[0] as number);
    expect(chances[2]).toBeLessThan(chances[1] as number);
  });

  it('names the length that it could show, which grows with noise', () => {
    const noisy = 0.03;
    const limit = seen({}).detectionLimitMm ?? 99;
    const coarse = seen({ noise: noisy }, placed(lit({ low: false, noise: noisy })));
    expect(coarse.detectionLimitMm ?? 99).toBeGreaterThan(limit);
    const grooveOf = (length: number): Groove => ({
      from: [50, 35],
      to: [50 + 0.6 * length, 35 + 0.8 * length],
      depth: 0.05,
    });
    expect(sure({ grooves: [grooveOf(2 * limit)] }).length).toBe(1);
    expect(sure({ grooves: [grooveOf(0.3 * limit)] })).toEqual([]);
  });

  it('says which directions the lamp could not show', () => {
    const { hiddenDeg } = scratchesOf(soft, soft, 305);
    expect(hiddenDeg).toEqual([117, 133]);
  });
});

describe('scratches under a low lamp without a twin', () => {
  const alone = (light: Partial<Light>) =>
    loneScratchesOf(placed(lit({ low: true, ...light })), 20);
  const sureAlone = (light: Partial<Light>) => alone(light).defects.filter(({ p }) => p >= 0.5);

  it('finds a long scratch that crosses print, less surely than with a twin', () => {
    const [found, ...others] = sureAlone({ grooves: [long] });
    expect(others).toEqual([]);
    // Rings cut it: of 22.2 mm the longest piece between two of them was measured at 6.5.
    expect(found?.lengthMm ?? 0).toBeGreaterThan(5);
    expect(found?.p ?? 1).toBeLessThan(sure({ grooves: [long] })[0]?.p ?? 0);
  });

  it('stays quiet on rings, discs and rules, sharp or noisy', () => {
    expect(sureAlone({})).toEqual([]);
    expect(sureAlone({ noise: 0.02 })).toEqual([]);
  });

  it('names the direction that stays hidden, and no length where noise hides all', () => {
    const plain = (noise: number) => {
      const samples = Uint8Array.from(
        { length: WIDTH * HEIGHT * 3 },
        (_, at) => 120 + 255 * noise * (NORMALS[at & 65_535] as number),
      );
      return loneScratchesOf(placed(pictureOf(WIDTH, HEIGHT, samples)), 20);
    };
    expect(plain(0.005).hiddenDeg).toEqual([12, 28]);
    expect(plain(0.005).detectionLimitMm).toBe(2.5);
    expect(plain(0.08).detectionLimitMm).toBeNull();
  });
});
