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

/** Changes the light of the places within a box of card millimetres; `on` tells whether one is on the card. */
interface Mark {
  readonly boxMm: readonly [number, number, number, number];
  readonly change: (x: number, y: number, light: number[], on: boolean) => void;
}

const round = (x: number, y: number, r: number): Mark['boxMm'] => [x - r, y - r, x + r, y + r];
const speck = (cx: number, cy: number, radius: number): Mark => ({
  boxMm: round(cx, cy, radius),
  change: (x, y, light) => {
    if (Math.hypot(x - cx, y - cy) < radius) light.fill(0.7);
  },
});
const stain = (cx: number, cy: number, radius: number): Mark => ({
  boxMm: round(cx, cy, radius),
  change: (x, y, light, on) => {
    if (!on || Math.hypot(x - cx, y - cy) > radius) return;
    light[0] = 0.97 * (light[0] as number);
    light[1] = 0.94 * (light[1] as number);
    light[2] = 0.7 * (light[2] as number);
  },
});
function dim(light: number[], share: number): void {
  for (const c of [0, 1, 2]) light[c] = share * (light[c] as number);
}
const shadow: Mark = {
  boxMm: [20, -9, 26, 99],
  change: (x, _, light) => {
    if (x > 20 && x < 26) dim(light, 0.8);
  },
};
const line = (at: number, beyond = false): Mark => ({
  boxMm: [at - 0.08, -9, at + 0.08, 99],
  change: (x, _, light, on) => {
    if ((on || beyond) && Math.abs(x - at) < 0.08) dim(light, 1.2);
  },
});

/** sRGB of a pixel, the mean light of three samples each way. */
function drawnAt(i: number, j: number, marks: readonly Mark[]): readonly number[] {
  const sum = [0, 0, 0];
  for (let k = 0; k < 9; k++) {
    const x = (i + ((k % 3) - 1) / 3 - 35) / PX_PER_MM;
    const y = (j + (Math.floor(k / 3) - 1) / 3 - 35) / PX_PER_MM;
    const light = printed(x, y);
    const on = x > 0 && y > 0 && x < SIZE[0] && y < SIZE[1];
    for (const mark of marks) mark.change(x, y, light, on);
    for (const c of [0, 1, 2]) sum[c] = (sum[c] as number) + (light[c] as number) / 9;
  }
  return sum.map(encodedOf);
}

/** The card without marks, drawn once. */
const UNMARKED = new Float32Array(3 * WIDTH * HEIGHT);
for (let at = 0; at < WIDTH * HEIGHT; at++)
  UNMARKED.set(drawnAt(at % WIDTH, Math.floor(at / WIDTH), []), 3 * at);

/** A card with a plain border and busy art. */
function drawn(marks: readonly Mark[], noise = 0.006, mirrored = false): Picture {
  const values = UNMARKED.slice();
  for (const { boxMm } of marks) {
    const [x0, y0, x1, y1] = boxMm.map((mm) => Math.round(mm * PX_PER_MM + 35));
    for (
      let j = Math.max(0, (y0 as number) - 1);
      j <= Math.min(HEIGHT - 1, (y1 as number) + 1);
      j++
    )
      for (
        let i = Math.max(0, (x0 as number) - 1);
        i <= Math.min(WIDTH - 1, (x1 as number) + 1);
        i++
      )
        values.set(drawnAt(i, j, marks), 3 * (j * WIDTH + i));
  }
  const samples = new Uint8Array(values.length);
  for (let at = 0; at < values.length; at++) {
    const pixel = Math.floor(at / 3);
    const column = pixel % WIDTH;
    const from = mirrored ? 3 * (pixel - column + WIDTH - 1 - column) + (at % 3) : at;
    const salt = 3 * pixel * 31 + (at % 3) * 7919 + ((3 * pixel) >> 7);
    const grain = noise * (NORMALS[salt & 65_535] as number);
    const value = (values[from] as number) + grain;
    samples[at] = Math.round(255 * Math.min(1, Math.max(0, value)));
  }
  return pictureOf(WIDTH, HEIGHT, samples);
}

/** The picture at a third of its size: the mean of each three by three pixels. */
function thirdOf({ width, samples }: Picture): Picture {
  const [across, down] = [Math.floor(WIDTH / 3), Math.floor(HEIGHT / 3)];
  const means = Uint8Array.from({ length: 3 * across * down }, (_, at) => {
    const [x, y] = [Math.floor(at / 3) % across, Math.floor(at / 3 / across)];
    let sum = 0;
    for (let k = 0; k < 9; k++) {
      const pixel = (3 * y + Math.floor(k / 3)) * width + 3 * x + (k % 3);
      sum += samples[3 * pixel + (at % 3)] as number;
    }
    return Math.round(sum / 9);
  });
  return pictureOf(across, down, means);
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
    // Grains of dust on both sides at one height are no line: only one half of each border shows them.
    expect(
      seen(drawn([speck(1.2, 45, 0.25), speck(61.8, 45, 0.25)])).map(({ kind }) => kind),
    ).toEqual(['speck', 'speck']);
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
    const beliefs = (marks: readonly Mark[], onGlass: boolean) =>
      stillMarksOf(drawn(marks), map, FRAME, onGlass)
        .defects.filter(({ kind, centreMm: [, y] }) => kind === 'speck' && y < 3)
        .map(({ p }) => p);
    const [still, scanned, dusty] = [
      beliefs(specks, false),
      beliefs(specks, true),
      beliefs([...specks, ...dust], true),
    ];
    expect([still.length, scanned.length]).toEqual([5, 5]);
    expect(Math.min(...still)).toBeGreaterThan(0.5);
    // One scan cannot tell dust on the glass from a speck.
    expect(Math.max(...scanned)).toBeLessThan(0.5);
    expect(Math.max(0, ...dusty)).toBeLessThan(Math.min(...scanned));
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

  it('names light spots in the print without believing them, less where there are many', () => {
    const spots = (count: number) =>
      stillMarksOf(
        drawn(Array.from({ length: count }, (_, i) => speck(12 + 8 * i, 20, 0.25))),
        map,
        FRAME,
        false,
      ).defects.filter(
        ({ kind, wear, centreMm: [x, y] }) => kind === 'speck' && !wear && x > 5 && y > 5,
      );
    const [one, ...others] = spots(1);
    expect(others).toEqual([]);
    expect(Math.hypot((one?.centreMm[0] ?? 0) - 12, (one?.centreMm[1] ?? 0) - 20)).toBeLessThan(
      0.15,
    );
    expect(one?.p ?? 1).toBeLessThan(0.5);
    expect(one?.p ?? 0).toBeGreaterThan(0.05);
    // Pixels are 0.02 mm² each and a disc of 0.2 mm² has a rim of twelve of them.
    expect(Math.abs((one?.areaMm2 ?? 0) - Math.PI * 0.25 ** 2)).toBeLessThan(0.1);
    for (const many of spots(5)) expect(many.p).toBeLessThan((one?.p ?? 0) / 3);
  });

  it('states what it could show, and less of it under noise', () => {
    const limitOf = (noise: number) => {
      const { limits } = stillMarksOf(drawn([], noise), map, FRAME, false);
      return limits.find(({ kinds }) => kinds.includes('print-line'))?.mm ?? 9;
    };
    expect(limitOf(0.006)).toBeLessThan(0.3);
    expect(limitOf(0.03)).toBeGreaterThan(limitOf(0.006));
  });

  it('finds a stain and a print line in a picture of a third the size, and is quiet on a clean one', () => {
    // The grid of 3.5 pixels a millimetre stands for the picture's own 3.3.
    const small = (marks: readonly Mark[]) => {
      const picture = thirdOf(drawn(marks));
      const { width, height } = picture;
      const corners = CORNERS.map(([x, y]) => [(x - 1) / 3, (y - 1) / 3]) as unknown as Corners;
      return stillMarksOf(
        picture,
        cardMapOf(corners, SIZE, { k1: 0, width, height }),
        FRAME,
        false,
      );
    };
    const marked = small(planted).defects.filter(({ p }) => p >= 0.5);
    const stained = marked.find(({ kind }) => kind === 'stain');
    const lined = marked.find(({ kind }) => kind === 'print-line');
    expect(Math.abs((stained?.centreMm[1] ?? 0) - 60)).toBeLessThan(0.5);
    // Columns lie 0.29 mm apart.
    expect(Math.abs((lined?.centreMm[0] ?? 0) - 30)).toBeLessThan(0.3);
    const clean = small([]);
    expect(clean.defects.filter(({ p }) => p >= 0.5)).toEqual([]);
    const least = clean.limits.find(({ where }) => where === 'of silvering where print is dark');
    expect(least?.mm).toBeGreaterThan(0.5);
  });

  it('says nothing of the border of a card without one', () => {
    const { defects, limits } = stillMarksOf(drawn(planted), map, null, false);
    expect(limits.filter(({ where }) => where !== 'of silvering where print is dark')).toEqual([]);
    expect(defects.filter(({ p }) => p >= 0.5)).toEqual([]);
  });
});
