import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import type { Frame } from '../frame/types.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { Corners } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { type Picture, pictureOf } from '../picture.ts';
import { stillMarksOf } from './still-marks.ts';

const SIZE = [63, 88] as const;
const PX_PER_MM = 10;
const [WIDTH, HEIGHT] = [700, 950];
const CORNERS: Corners = [
  [35, 35],
  [665, 35],
  [665, 915],
  [35, 915],
];
const BORDER = 3.5;
const FRAME = {
  bordersMm: { top: BORDER, right: BORDER, bottom: BORDER, left: BORDER },
  rotationDeg: 0,
} as Frame;
const NORMALS = (() => {
  const random = chance(5);
  return Float32Array.from({ length: 1 << 16 }, () => random.normal());
})();

/** Changes the light of a place; `on` tells whether it lies on the card. */
type Mark = (x: number, y: number, light: number[], on: boolean) => void;

const speck =
  (cx: number, cy: number, radius: number): Mark =>
  (x, y, light) => {
    if (Math.hypot(x - cx, y - cy) < radius) light.fill(0.7);
  };
const stain =
  (cx: number, cy: number, radius: number): Mark =>
  (x, y, light, on) => {
    if (!on || Math.hypot(x - cx, y - cy) > radius) return;
    light[0] = 0.97 * (light[0] as number);
    light[1] = 0.94 * (light[1] as number);
    light[2] = 0.7 * (light[2] as number);
  };
function dim(light: number[], share: number): void {
  for (const c of [0, 1, 2]) light[c] = share * (light[c] as number);
}
const shadow: Mark = (x, _, light) => {
  if (x > 20 && x < 26) dim(light, 0.8);
};
const line =
  (at: number, beyond = false): Mark =>
  (x, _, light, on) => {
    if ((on || beyond) && Math.abs(x - at) < 0.08) dim(light, 1.2);
  };

/** A card with a plain border and busy art, three samples a pixel each way, in linear light. */
function drawn(marks: readonly Mark[], noise = 0.006, mirrored = false): Picture {
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  for (let j = 0; j < HEIGHT; j++)
    for (let i = 0; i < WIDTH; i++) {
      const sum = [0, 0, 0];
      for (let k = 0; k < 9; k++) {
        const px = i + ((k % 3) - 1) / 3;
        const x = ((mirrored ? WIDTH - 1 - px : px) - 35) / PX_PER_MM;
        const y = (j + (Math.floor(k / 3) - 1) / 3 - 35) / PX_PER_MM;
        const light = printed(x, y);
        const on = x > 0 && y > 0 && x < SIZE[0] && y < SIZE[1];
        for (const mark of marks) mark(x, y, light, on);
        for (const c of [0, 1, 2]) sum[c] = (sum[c] as number) + (light[c] as number) / 9;
      }
      const at = 3 * (j * WIDTH + i);
      for (const c of [0, 1, 2]) {
        const grain = noise * (NORMALS[(at * 31 + c * 7919 + (at >> 7)) & 65_535] as number);
        const value = encodedOf(sum[c] as number) + grain;
        samples[at + c] = Math.round(255 * Math.min(1, Math.max(0, value)));
      }
    }
  return pictureOf(WIDTH, HEIGHT, samples);
}

function printed(x: number, y: number): number[] {
  if (x < 0 || y < 0 || x > SIZE[0] || y > SIZE[1]) return [0.25, 0.25, 0.25];
  const depth = Math.min(x, y, SIZE[0] - x, SIZE[1] - y);
  if (depth < BORDER) return [0.12, 0.2, 0.35];
  if (y > 8 && y < 14 && x > 8 && x < 55) return [0.7, 0.68, 0.6];
  const ring = Math.sin(2 * Math.hypot(x - 30, y - 50)) > 0.6 ? 0.3 : 0.1;
  return [ring, 0.2 + 0.1 * Math.sin(x / 3), x > 40 && x < 41 ? 0.6 : 0.2];
}

const map = cardMapOf(CORNERS, SIZE, { k1: 0, width: WIDTH, height: HEIGHT });
const seen = (picture: Picture, onGlass = false, frame: Frame | null = FRAME) =>
  stillMarksOf(picture, map, frame, onGlass).defects.filter(({ p }) => p >= 0.5);

describe('marks of one still picture', () => {
  const planted = [speck(20, 1.8, 0.25), stain(1.9, 60, 1.5), line(30)];
  const found = seen(drawn(planted));

  it('finds a speck, a stain and a print line at their places', () => {
    expect(found.map(({ kind }) => kind).sort()).toEqual(['print-line', 'speck', 'stain']);
    const at = (kind: string) => found.find((one) => one.kind === kind);
    expect(
      Math.hypot((at('speck')?.centreMm[0] ?? 0) - 20, (at('speck')?.centreMm[1] ?? 0) - 1.8),
    ).toBeLessThan(0.1);
    expect(Math.abs((at('stain')?.centreMm[1] ?? 0) - 60)).toBeLessThan(0.5);
    // Columns lie 0.14 mm apart.
    expect(Math.abs((at('print-line')?.centreMm[0] ?? 0) - 30)).toBeLessThan(0.15);
    // The stated error of a speck's area is a quarter and 0.01 mm².
    const speckArea = Math.PI * 0.25 ** 2;
    expect(Math.abs((at('speck')?.areaMm2 ?? 0) - speckArea)).toBeLessThan(0.01 + speckArea / 2);
  });

  it('stays quiet on an unmarked card, art and noise notwithstanding', () => {
    expect(seen(drawn([]))).toEqual([]);
    expect(seen(drawn([], 0.03))).toEqual([]);
    expect(seen(drawn([]), true)).toEqual([]);
  });

  it('takes what darkens the ground too for a shadow, and a line over the ground for the scanner', () => {
    expect(seen(drawn([shadow]))).toEqual([]);
    const [over] = stillMarksOf(drawn([line(30, true)]), map, FRAME, true).defects;
    const [within] = stillMarksOf(drawn([line(30)]), map, FRAME, true).defects;
    expect(over?.p ?? 0).toBeLessThan(within?.p ?? 0);
  });

  it('believes a speck less where the ground shows dust', () => {
    const specks = [10, 20, 30, 40, 50].map((x) => speck(x, 1.8, 0.2));
    const dust = [8, 14, 22, 33, 44, 52].flatMap((x) => [
      speck(x, -1.4, 0.15),
      speck(x, 89.4, 0.15),
    ]);
    expect(seen(drawn(specks), true).length).toBe(5);
    expect(seen(drawn([...specks, ...dust]), true)).toEqual([]);
  });

  it('swaps left and right with a mirrored picture', () => {
    const mirrored = seen(drawn(planted, 0.006, true));
    const middles = (list: typeof found, turn: (x: number) => number) =>
      list.map(({ centreMm }) => turn(centreMm[0])).sort((a, b) => a - b);
    const [a, b] = [middles(found, (x) => x), middles(mirrored, (x) => SIZE[0] - x)];
    expect(b.length).toBe(a.length);
    // A pixel of the grid is 0.14 mm, and the noise is drawn anew.
    for (const [i, x] of a.entries()) expect(Math.abs(x - (b[i] as number))).toBeLessThan(0.3);
  });

  it('says nothing of a card without a border', () => {
    expect(stillMarksOf(drawn(planted), map, null, false)).toEqual({ defects: [], limits: [] });
  });
});
