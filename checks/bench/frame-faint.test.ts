import { expect, it } from 'vitest';
import { frameOf } from '../../src/bench/index.ts';
import { cardWith, outlineOf, PRINT, photoMap } from './cards.ts';
import { box, drawn, type Light } from './drawn-card.ts';

const DARK: Light = [0.012, 0.012, 0.012];
const NIGHT: Light = [0.021, 0.024, 0.02];

it('takes the faint line where dark art meets a dark border, not the bright plate inside', () => {
  const card = cardWith({ style: 'plain', border: DARK, art: [NIGHT] });
  // A plate along the top and another along the bottom, as wide as the art nearly.
  const plates = [box(4, 6, 59.5, 11, [0.6, 0.55, 0.4]), box(4, 60, 59.5, 82, [0.5, 0.5, 0.45])];
  const picture = drawn({ ...card, patches: [...card.patches, ...plates], noise: 0.0005 });
  const { frame, whyNot } = frameOf(picture, outlineOf(photoMap()));
  expect(whyNot).toBeNull();
  // The plates lie 3 mm and more inside; allowed is a third of a pixel.
  for (const side of ['left', 'right', 'top', 'bottom'] as const)
    expect(Math.abs(frame!.bordersMm![side] - PRINT.borders[side])).toBeLessThan(0.06);
});
