import { describe, expect, it } from 'vitest';
import { cardMapOf } from '../geometry/card-map.ts';
import { pictureOf } from '../picture.ts';
import { clarityOf, clarityWords, notLight } from './clarity.ts';

const [WIDTH, HEIGHT, PX] = [640, 890, 10];
const map = cardMapOf(
  [
    [5, 5],
    [635, 5],
    [635, 885],
    [5, 885],
  ],
  [63, 88],
  { k1: 0, width: WIDTH, height: HEIGHT },
);

/** The error function by the series of its definition. */
function erf(x: number): number {
  if (Math.abs(x) > 3.5) return Math.sign(x);
  let [sum, term] = [x, x];
  for (let n = 1; n < 80; n++) {
    term *= -(x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

/** Bars 4 mm wide, their edges spread by a Gaussian of `sigma` pixels; codes from `low` to `high`. */
function barred(sigma: number, low: number, high: number) {
  const samples = new Uint8Array(3 * WIDTH * HEIGHT);
  for (let x = 0; x < WIDTH; x++) {
    const near = 40 * Math.round(x / 40);
    const up = (near / 40) % 2 === 0 ? 1 : -1;
    const share = 0.5 + 0.5 * up * erf((x - near + 0.5) / (sigma * Math.SQRT2));
    for (let y = 0; y < HEIGHT; y++)
      samples.fill(
        Math.round(low + (high - low) * share),
        3 * (y * WIDTH + x),
        3 * (y * WIDTH + x) + 3,
      );
  }
  return clarityOf(pictureOf(WIDTH, HEIGHT, samples, null), map);
}

describe('clarity of a picture', () => {
  it.each([2, 3, 5])('measures edges spread by a Gaussian of %i pixels', (sigma) => {
    const expected = (Math.sqrt(2 * Math.PI) * sigma) / PX;
    // The steepest step lies half a pixel off the middle: measured within 4 %, allowed 6 %.
    expect(Math.abs((barred(sigma, 40, 200).blurMm ?? 9) / expected - 1)).toBeLessThan(0.06);
  });

  it('says what a blurred picture cannot show and what to do, and nothing of a sharp one', () => {
    expect(clarityWords(barred(1, 40, 200))).toEqual([]);
    const [words] = clarityWords(barred(4, 40, 200));
    expect(words).toContain('marks under 1.0 mm cannot be seen. Photograph it again');
  });

  it('says how much is blown out', () => {
    const { blownOut } = barred(1, 100, 255);
    // Lines begin and end within bars: measured 0.557, allowed 0.08 from one half.
    expect(Math.abs(blownOut - 0.5)).toBeLessThan(0.08);
    expect(clarityWords({ blurMm: null, blownOut })[0]).toMatch(/^\d+ % of the face is blown out/);
  });

  it('takes pale places for light by as much of the face as is blown out', () => {
    expect(notLight({ blurMm: null, blownOut: 0.62 })).toBeCloseTo(0.38, 12);
    expect(notLight({ blurMm: null, blownOut: 0.05 })).toBe(1);
  });

  it('says nothing of blur where there are no edges', () => {
    expect(barred(1, 100, 110).blurMm).toBeNull();
  });
});
