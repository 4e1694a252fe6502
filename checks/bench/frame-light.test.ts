import { describe, expect, it } from 'vitest';
import { frameOf } from '../../src/bench/index.ts';
import { cardWith, outlineOf, PRINT, type Print, photoMap } from './cards.ts';
import { box, type Drawing, drawn, type Light, type Patch } from './drawn-card.ts';

// Drawn cards: every edge is known exactly. Rendered cards are in the method's page.

const [W, H] = [63, 88];
const SIDES = ['left', 'right', 'top', 'bottom'] as const;
const SKIN: Light = [0.4, 0.2, 0.13];

/** Half of the light is kept from a band across the picture, soft at its rims. */
function shadow(x: number, y: number): number {
  const soft = (d: number) => 1 / (1 + Math.exp(-d / 6));
  const across = 0.5 * x + y - 400;
  return 1 - 0.55 * soft(across + 90) * soft(90 - across);
}

/** Light falls off to a third from one corner to the other. */
const slope = (x: number, y: number) => 1 - (0.66 * (x + y)) / 1070;

function answerTo(print: Partial<Print>, over: readonly Patch[], more: Partial<Drawing> = {}) {
  const card = cardWith({ style: 'plain', ...print });
  const picture = drawn({ ...card, patches: [...card.patches, ...over], noise: 0.003, ...more });
  return frameOf(picture, outlineOf(photoMap()));
}

/** Largest error of a border, in millimetres. */
function errorOf({ frame }: ReturnType<typeof answerTo>): number {
  const errors = SIDES.map((side) => (frame?.bordersMm?.[side] ?? NaN) - PRINT.borders[side]);
  return Math.max(...errors.map(Math.abs));
}

describe('the frame of a card in uneven light', () => {
  it.each([
    ['a shadow that lies across', shadow],
    ['light that falls off', slope],
  ])('is measured under %s', (_, shade) => {
    const answer = answerTo({}, [], { shade });
    expect(answer.whyNot).toBeNull();
    // A pixel is 0.17 mm; measured 0.008 mm, allowed 0.03.
    expect(errorOf(answer)).toBeLessThan(0.03);
  });

  it('is refused where art of one colour reaches the cut edge and plates stand along the sides', () => {
    const plates = [box(4, 4, W - 4, 12, SKIN), box(4, 42, W - 4, H - 4, SKIN)];
    const border = box(-1, -1, W + 1, H + 1, PRINT.border);
    for (const shade of [slope, shadow]) {
      const { frame, whyNot } = answerTo({}, [border, ...plates], { shade });
      expect(frame).toBeNull();
      expect(whyNot).toMatch(/right and left sides is not of one colour/);
    }
  });

  it('is refused where art with bands reaches the cut edge, whatever the light', () => {
    const ring = [box(3, 3, W - 3, 3.4, SKIN), box(3, H - 3.4, W - 3, H - 3, SKIN)];
    const sides = { left: -1, right: -1, top: -1, bottom: -1 };
    const beside = [box(3, 3, 3.4, H - 3, SKIN), box(W - 3.4, 3, W - 3, H - 3, SKIN)];
    const answer = answerTo({ borders: sides }, [...ring, ...beside], { shade: shadow });
    expect(answer.frame).toBeNull();
  });
});

describe('the frame of a card over which fingers lie', () => {
  const two = [box(50, 26, W + 9, 42, SKIN), box(54, 46, W + 9, 62, SKIN)];

  it('is measured on the rest of the side, with more doubt, and says so', () => {
    const [bare, held] = [answerTo({}, []), answerTo({}, two)];
    expect(held.whyNot).toBe(
      'Something lies over part of the right side: the border there is measured on the rest.',
    );
    // Measured 0.001 mm, allowed 0.03, a sixth of a pixel.
    expect(errorOf(held)).toBeLessThan(0.03);
    expect(held.frame!.bordersSdMm!.right).toBeGreaterThan(bare.frame!.bordersSdMm!.right);
  });

  it('is measured where a finger lies over either side', () => {
    const answer = answerTo({}, [two[0] as Patch, box(-9, 50, 12, 66, SKIN)]);
    expect(answer.whyNot).toMatch(/over part of the right and left sides/);
    expect(errorOf(answer)).toBeLessThan(0.03);
  });

  it('is refused where lines run on over land and sky alike: nothing lies over them', () => {
    const sky = box(-1, -1, W + 1, 50, [0.05, 0.12, 0.3]);
    const land = box(-1, 50, W + 1, 72, [0.1, 0.2, 0.05]);
    const sea = box(-1, 72, W + 1, H + 1, [0.05, 0.12, 0.3]);
    const ring = [
      box(3, 3, W - 3, 3.4, SKIN),
      box(3, H - 3.4, W - 3, H - 3, SKIN),
      box(3, 3, 3.4, H - 3, SKIN),
      box(W - 3.4, 3, W - 3, H - 3, SKIN),
    ];
    const { frame, whyNot } = answerTo({}, [sky, land, sea, ...ring]);
    expect(frame).toBeNull();
    expect(whyNot).toMatch(/right and left sides is not of one colour/);
  });
});
