import { describe, expect, it } from 'vitest';
import { findOutline, type Picture, pictureOf } from '../../src/bench/index.ts';
import { chance } from '../../src/maths/index.ts';

const WIDTH = 600;
const HEIGHT = 480;

/** A card about a place, turned, with round tips of 3 mm: pixels a millimetre given. */
interface Card {
  readonly x: number;
  readonly y: number;
  readonly turnDeg: number;
  readonly perMm: number;
}

/** Signed distance in millimetres from a card's cut edge, positive outside. */
function beyondCut({ x, y, turnDeg, perMm }: Card, px: number, py: number): number {
  const angle = (turnDeg * Math.PI) / 180;
  const [u, v] = [px - x, py - y];
  const a = Math.abs(u * Math.cos(angle) + v * Math.sin(angle)) / perMm - 31.5 + 3;
  const b = Math.abs(v * Math.cos(angle) - u * Math.sin(angle)) / perMm - 44 + 3;
  return Math.hypot(Math.max(a, 0), Math.max(b, 0)) + Math.min(Math.max(a, b), 0) - 3;
}

/** Cards with a dark border about pale art, on a middling ground with a little noise, times `light`. */
function drawn(cards: readonly Card[], light = 1, seed = 3): Picture {
  const random = chance(seed);
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  for (let i = 0; i < WIDTH * HEIGHT; i++) {
    const [x, y] = [i % WIDTH, Math.floor(i / WIDTH)];
    let value = 0.3;
    for (const card of cards) {
      const out = beyondCut(card, x, y) * card.perMm;
      const card01 = Math.min(1, Math.max(0, 0.5 - out));
      const art01 = Math.min(1, Math.max(0, 0.5 - (out + 3.5 * card.perMm)));
      value = value * (1 - card01) + (0.05 * (1 - art01) + 0.55 * art01) * card01;
    }
    for (let c = 0; c < 3; c++)
      samples[3 * i + c] = Math.round(
        255 * curve(Math.min(1, Math.max(0, value * light + 0.004 * random.normal()))),
      );
  }
  return pictureOf(WIDTH, HEIGHT, samples);
}

/** The sRGB curve, IEC 61966-2-1, written down here once more on purpose. */
function curve(light: number): number {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}

const known = { sizeMm: [63, 88], dpi: null } as const;
const one: Card = { x: 160, y: 240, turnDeg: 3, perMm: 3.4 };

describe('a picture in which no one outline can be trusted', () => {
  it('is told as one of two cards, where a second lies beside the first', () => {
    const beside = { ...one, x: 430, y: 236, turnDeg: -4 };
    expect(findOutline(drawn([one]), known).trouble).toBeNull();
    const { trouble } = findOutline(drawn([one, beside]), known);
    expect(trouble?.what).toBe('two-cards');
    expect(trouble?.words).toMatch(/^More than one card .* Photograph each card by itself/);
  });

  it.each([
    ['left', { ...one, x: 40 }],
    ['right', { ...one, x: 560 }],
    ['top', { ...one, x: 300, y: 60 }],
    ['bottom', { ...one, x: 300, y: 420 }],
  ])('is told as cut off, where the card runs out over the %s rim', (_, card) => {
    const { hypotheses, trouble } = findOutline(drawn([card]), known);
    expect(trouble?.what).toBe('cut-off');
    expect(trouble?.words).toMatch(/Photograph it again with a finger of ground on all four sides/);
    expect(hypotheses.every(({ p }) => p < 0.5)).toBe(true);
  });

  it('is told as too dark, where hardly any light fell on it', () => {
    expect(findOutline(drawn([one], 0.01), known).trouble?.what).toBe('too-dark');
  });

  it('is told as blown out, where the light left no detail', () => {
    const { trouble } = findOutline(drawn([one], 40), known);
    expect(trouble?.what).toBe('blown-out');
    expect(trouble?.words).toMatch(/Take away the flash or the direct light/);
  });

  it('is told as of another shape, where the size told is another', () => {
    const narrow = { sizeMm: [66, 200], dpi: null } as const;
    const { trouble } = findOutline(drawn([one]), narrow);
    expect(trouble?.what).toBe('other-shape');
    // Drawn at 63 × 88 mm, 0.716 to 1.
    expect(trouble?.words).toMatch(/about 0\.7[0-3] to 1, and 66 × 200 mm would be 0\.33 to 1/);
    expect(findOutline(drawn([]), narrow).trouble?.what).toBe('no-card');
  });

  it('is told as without a card, where there is none', () => {
    expect(findOutline(drawn([]), known).trouble?.what).toBe('no-card');
  });
});
