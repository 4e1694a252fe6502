import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import { cardViewOf } from '../rectify/view.ts';
import { type CardTones, GROUND_MM } from './card-tones.ts';
import { openedOf } from './opening.ts';
import { silveringOf } from './silvering.ts';

const SIZE = [63, 88] as const;
const WHITE = [0.8, 0.8, 0.8];
const BORDERS = { top: 4, right: 4, bottom: 4, left: 4 };
const [DARK, BARE] = [0.15, 0.8];

/** Tone by place in card millimetres: 0 to 1 of the square root of light. */
type Tone = (x: number, y: number) => number;

function cardOf(tone: Tone, ground = 0.4): CardTones {
  const pxPerMm = 7;
  const view = { ...cardViewOf(SIZE, pxPerMm, GROUND_MM), most: [1, 1] as const };
  const random = chance(3);
  const tones = new Float32Array(3 * view.width * view.height);
  for (let i = 0; i < view.width * view.height; i++) {
    const x = view.originMm[0] + (i % view.width) * view.stepMm[0];
    const y = view.originMm[1] + Math.floor(i / view.width) * view.stepMm[1];
    const on = x > 0 && y > 0 && x < SIZE[0] && y < SIZE[1];
    tones.fill((on ? tone(x, y) : ground) + 0.005 * random.normal(), 3 * i, 3 * i + 3);
  }
  return { view, pxPerMm, tones };
}

/** Specks along the left edge, each `size` mm wide, of uneven lengths. */
const specks = [0.3, 0.8, 0.45, 1.1, 0.35, 0.6, 0.9].map(
  (long, k) => [30 + 1.5 * k, long] as const,
);
const silvered: Tone = (x, y) =>
  x < 0.45 && specks.some(([from, long]) => y > from && y < from + long) ? BARE : DARK;
const whitened: Tone = (x, y) => (x < 0.45 && y > 30 && y < 40 ? BARE : DARK);
/** Rows of letters on a pale plate. */
const lettered: Tone = (x, y) => {
  const plate = x > 10 && x < 50 && y > 60 && y < 80;
  const ink = Math.floor(x / 0.45) % 2 === 0 && y % 2.7 < 1.3;
  return plate && !ink ? BARE : DARK;
};
const found = (tone: Tone, ground?: number) =>
  silveringOf(cardOf(tone, ground), SIZE, BORDERS, WHITE);
const likely = (tone: Tone) => found(tone).defects.filter(({ p }) => p >= 0.5);

describe('silvering', () => {
  it('is one place of broken specks along a dark edge, with its area', () => {
    const [place, ...more] = likely(silvered);
    expect(more).toEqual([]);
    expect([place?.kind, place?.wear]).toEqual(['edge-wear', 'silvering']);
    const drawn = 0.45 * specks.reduce((sum, [, long]) => sum + long, 0);
    // Cells of a seventh of a millimetre: measured 12 % below, as blur-free rims fall
    // between them, allowed 20 %.
    expect(Math.abs((place?.areaMm2 ?? 0) / drawn - 1)).toBeLessThan(0.2);
    expect(Math.abs((place?.lengthMm ?? 0) - 9.9)).toBeLessThan(0.3);
  });

  it('is not what is one piece, nor the gaps between letters, nor a dark face untouched', () => {
    expect(likely(whitened)).toEqual([]);
    expect(likely(lettered)).toEqual([]);
    expect(found(() => DARK).defects).toEqual([]);
  });

  it('is never likelier than not where art may have such specks', () => {
    const inside: Tone = (x, y) => (x > 25 ? silvered(x - 25, y) : DARK);
    const { defects } = found(inside);
    expect(defects.map(({ kind }) => kind)).toEqual(['speck']);
    expect(defects[0]?.p).toBeGreaterThan(0.2);
    expect(defects[0]?.p).toBeLessThan(0.5);
  });

  it('swaps left and right with a mirrored face', () => {
    const [one] = likely(silvered);
    const [other] = likely((x, y) => silvered(SIZE[0] - x, y));
    // Noise is drawn at other places: measured 0.02 mm, allowed 0.1.
    expect(Math.abs((one?.centreMm[0] ?? 0) - (SIZE[0] - (other?.centreMm[0] ?? 0)))).toBeLessThan(
      0.1,
    );
    expect(Math.abs((one?.centreMm[1] ?? 0) - (other?.centreMm[1] ?? 9))).toBeLessThan(0.1);
  });

  it('says from which size on it would have shown, and that a pale face shows none', () => {
    const limit = found(() => DARK).detectionLimitMm ?? 9;
    expect(limit).toBeLessThan(0.5);
    const discs: Tone = (x, y) =>
      [40, 41, 42].some((at) => Math.hypot(x - 2, y - at) < 0.6 * limit) ? BARE : DARK;
    expect(found(discs).defects.length).toBe(1);
    expect(found(() => 0.8).detectionLimitMm).toBeNull();
  });
});

it('opens a plane as its definition has it', () => {
  const random = chance(8);
  const [width, height, reach] = [11, 9, 2];
  const values = Float32Array.from({ length: width * height }, () => random.uniform());
  const least = (cx: number, cy: number) => {
    let value = 9;
    for (let y = cy - reach; y <= cy + reach; y++)
      for (let x = cx - reach; x <= cx + reach; x++)
        if (x >= 0 && y >= 0 && x < width && y < height)
          value = Math.min(value, values[y * width + x] as number);
    return value;
  };
  const opened = openedOf({ width, height, values }, reach).values;
  for (let i = 0; i < values.length; i++) {
    let most = -9;
    // The greatest least value of any square that holds the pixel.
    for (let y = Math.floor(i / width) - reach; y <= Math.floor(i / width) + reach; y++)
      for (let x = (i % width) - reach; x <= (i % width) + reach; x++)
        if (x >= 0 && y >= 0 && x < width && y < height) most = Math.max(most, least(x, y));
    expect(opened[i]).toBe(most);
  }
});
