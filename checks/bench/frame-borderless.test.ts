import { describe, expect, it } from 'vitest';
import { frameOf } from '../../src/bench/index.ts';
import { cardWith, outlineOf, PRINT, photoMap } from './cards.ts';
import { box, drawn, type Light, type Patch } from './drawn-card.ts';

// A drawn card: every edge is known exactly. Held-out rendered cards are in the method's page.

const outline = outlineOf(photoMap());
const [W, H] = [63, 88];
const LINE: Light = [0.75, 0.7, 0.5];

/** Four thin lines along the sides, as a frame's, with whatever lies beneath on both sides of them. */
const RING = [
  box(3, 3, W - 3, 3.4, LINE),
  box(3, H - 3.4, W - 3, H - 3, LINE),
  box(3, 3, 3.4, H - 3, LINE),
  box(W - 3.4, 3, W - 3, H - 3, LINE),
];

function answerTo(patches: readonly Patch[], borders: number, noise = 0.004) {
  const sides = { left: borders, right: borders, top: borders, bottom: borders };
  const card = cardWith({ borders: sides, style: 'plain' });
  return frameOf(drawn({ ...card, patches: [...card.patches, ...patches], noise }), outline);
}

describe('the frame of a card without a border', () => {
  it('is refused where art reaches the cut edge outside lines along all four sides', () => {
    const { frame, whyNot } = answerTo(RING, -1);
    expect(frame).toBeNull();
    // The bands of the art run across: above and below the lines lies one colour.
    expect(whyNot).toMatch(/along the right and left sides is not of one colour/);
  });

  it('is refused on plaid', () => {
    const across = Array.from({ length: 9 }, (_, i) =>
      box(-1, 2 + 10 * i, W + 1, 6 + 10 * i, [0.1, 0.1, 0.5]),
    );
    const down = Array.from({ length: 7 }, (_, i) =>
      box(2 + 9 * i, -1, 5 + 9 * i, H + 1, [0.5, 0.5, 0.1]),
    );
    const { frame, whyNot } = answerTo([...across, ...down], -1);
    expect(frame).toBeNull();
    expect(whyNot).toMatch(/reach the cut edge/);
  });

  it('is found with the same lines on one colour', () => {
    const plain = box(-1, -1, W + 1, H + 1, PRINT.border);
    expect(answerTo([plain, ...RING], -1).whyNot).toBeNull();
  });

  it('is found for all the wear, dust and fingers that leave most of the border to be seen', () => {
    const white: Light = [0.8, 0.8, 0.75];
    const worn = Array.from({ length: 6 }, (_, i) =>
      box(0, 5 + 13 * i, 0.4 + 0.2 * i, 9 + 13 * i, white),
    );
    const dust = Array.from({ length: 40 }, (_, i) =>
      box(5 + 1.3 * i, 1 + 0.03 * i, 5.3 + 1.3 * i, 1.3 + 0.03 * i, white),
    );
    const finger = box(52, 40, W + 9, 56, [0.4, 0.2, 0.13]);
    expect(answerTo([...worn, ...dust, finger], 3).frame).not.toBeNull();
  });
});
