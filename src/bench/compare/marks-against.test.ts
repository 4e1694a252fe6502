import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import type { Defect } from '../defects.ts';
import { cardMapOf } from '../geometry/card-map.ts';
import type { Corners } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { pictureOf } from '../picture.ts';
import { marksAgainst } from './marks-against.ts';
import type { Seen } from './seen.ts';

const SIZE = [63, 88] as const;
const PX = 9;
const [WIDTH, HEIGHT] = [640, 860];

/** Busy print shifted on its card, with bright discs at places of the print. */
function seenOf(shift: number, discs: readonly (readonly [number, number])[], seed = 7): Seen {
  const random = chance(3);
  const waves = Array.from({ length: 40 }, () => [
    2 * random.normal(),
    2 * random.normal(),
    6 * random.uniform(),
  ]) as [number, number, number][];
  const noise = chance(seed);
  const samples = new Uint8Array(3 * WIDTH * HEIGHT);
  for (let j = 0; j < HEIGHT; j++)
    for (let i = 0; i < WIDTH; i++) {
      const [x, y] = [(i - 20) / PX - shift, (j - 20) / PX];
      const art = waves.reduce((sum, [a, b, c]) => sum + Math.sin(a * x + b * y + c), 0) / 40;
      const disc = discs.some(([u, v]) => Math.hypot(x - u, y - v) < 0.3);
      const light = disc ? 0.7 : 0.15 + 0.3 * Math.abs(art);
      samples.fill(
        Math.round(255 * encodedOf(light) + noise.normal()),
        3 * (j * WIDTH + i),
        3 * (j * WIDTH + i) + 3,
      );
    }
  const corners: Corners = [
    [20, 20],
    [20 + 63 * PX, 20],
    [20 + 63 * PX, 20 + 88 * PX],
    [20, 20 + 88 * PX],
  ];
  const map = cardMapOf(corners, SIZE, { k1: 0, width: WIDTH, height: HEIGHT });
  return {
    picture: pictureOf(WIDTH, HEIGHT, samples, null),
    map,
    cornerSdMm: 0.01,
    measured: null,
    defects: discs.map(speck),
  };
}

const speck = ([x, y]: readonly [number, number]): Defect => ({
  kind: 'speck',
  centreMm: [x, y],
  boxMm: [x - 0.3, y - 0.3, x + 0.3, y + 0.3],
  areaMm2: 0.28,
  lengthMm: null,
  polygonMm: [],
  p: 0.2,
  sd: { centreMm: 0.05, areaMm2: 0.1, lengthMm: null },
  seenFrom: 'still',
});
const [STAR, WORN] = [
  [30, 40],
  [20, 60],
] as const;

describe('bright marks beside registered references', () => {
  const copy = seenOf(0, [STAR, WORN]);

  it('are print where a reference shows them, its print lying elsewhere on the card, and wear where none does', () => {
    const [star, worn] = marksAgainst(copy, [seenOf(0.5, [STAR], 8)], SIZE);
    expect(star?.shown).toBeGreaterThan(0.7);
    expect(star?.mark.p).toBeLessThan(0.1);
    expect(Math.abs(worn?.shown ?? 9)).toBeLessThan(0.3);
    expect(worn?.mark.p).toBeGreaterThan(0.8);
    expect(worn?.alone).toBe(0.2);
  });

  it('are print where any of several references shows them', () => {
    const references = [seenOf(0, [], 8), seenOf(0.2, [STAR], 9)];
    const [star] = marksAgainst(copy, references, SIZE);
    expect(star?.mark.p).toBeLessThan(0.1);
  });

  it('are left as they are where no reference lies on the copy', () => {
    const black = {
      ...copy,
      picture: pictureOf(WIDTH, HEIGHT, new Uint8Array(3 * WIDTH * HEIGHT), null),
    };
    expect(marksAgainst(copy, [black], SIZE)).toEqual([]);
  });
});
