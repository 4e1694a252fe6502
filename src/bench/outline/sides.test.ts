import { describe, expect, it } from 'vitest';
import { chance } from '../../maths/index.ts';
import { edgesOf } from './edges.ts';
import type { Reduced } from './reduced.ts';
import { sideGuesses } from './sides.ts';

const SIZE = 300;

/** A picture of one mean colour whose grain is so coarse to the left and to the right of a column. */
function grained(left: number, right: number, column: number): Reduced {
  const luck = chance(7);
  const colours = Float32Array.from({ length: SIZE * SIZE * 3 }, (_, i) => {
    const x = Math.floor(i / 3) % SIZE;
    return 0.2 + (x < column ? left : right) * luck.normal();
  });
  return { width: SIZE, height: SIZE, factor: 1, colours };
}

/** Guesses beside an upright line six pixels inward of the middle column; outward is to the right. */
function guessesIn(picture: Reduced) {
  const x = SIZE / 2 - 6 - (SIZE - 1) / 2;
  const terms = { reach: 30, face: 5, count: 7 };
  return sideGuesses(picture, edgesOf(picture), [x, -120, x, 120], terms);
}

describe('a side of one colour with its ground', () => {
  it('is seen by the grain that changes along it', () => {
    const [best] = guessesIn(grained(0.002, 0.02, SIZE / 2));
    // Measured 0.5, as much as grain alone can say, within 1 pixel; colours find none nearer than 5.
    expect(best?.evidence).toBeGreaterThan(0.3);
    expect(((best?.from as number) + (best?.to as number)) / 2 - 6).toBeCloseTo(0, -0.5);
  });

  it('is not seen where the grain is the same on both sides', () => {
    for (const { evidence } of guessesIn(grained(0.02, 0.02, SIZE / 2)))
      expect(evidence).toBeLessThan(0.15);
  });

  it('has the other edge beyond where the line tried lies inward of it', () => {
    const picture = grained(0.002, 0.02, SIZE / 2);
    const { width, colours } = picture;
    for (let y = 0; y < SIZE; y++)
      for (let x = SIZE / 2 - 18; x < SIZE / 2 - 15; x++)
        colours.fill(0.6, (y * width + x) * 3, (y * width + x) * 3 + 3);
    const line = guessesIn(picture).find(({ evidence }) => evidence > 0.7);
    expect(line?.beyond).toBeGreaterThan(0.3);
  });
});
