import { describe, expect, it } from 'vitest';
import {
  bordersAlong,
  type Corners,
  cardMapOf,
  type Frame,
  faceAlong,
  frameOf,
  type Outline,
  outlineByHand,
  type Picture,
} from '../../src/bench/index.ts';
import { cardWith, outlineOf, photoMap } from './cards.ts';
import { drawn } from './drawn-card.ts';

const map = photoMap();
const drawing = { ...cardWith({ style: 'plain', turn: 0.4 }), noise: 0.004, blur: 0.7 };
const picture = drawn(drawing);
const covariance = Float64Array.from({ length: 81 }, (_, i) => (i % 10 === 0 && i < 80 ? 0.04 : 0));

function measured(from: Picture, outline: Outline): Frame {
  const { frame, whyNot } = frameOf(from, outline);
  expect(whyNot).toBeNull();
  return frame as Frame;
}

/** The picture with its pixels taken from elsewhere. */
function rearranged(
  from: Picture,
  of: (x: number, y: number) => readonly [number, number],
): Picture {
  const samples = from.samples.slice();
  for (let y = 0; y < from.height; y++)
    for (let x = 0; x < from.width; x++) {
      const [u, v] = of(x, y);
      const at = (v * from.width + u) * 3;
      samples.set(from.samples.subarray(at, at + 3), (y * from.width + x) * 3);
    }
  return { ...from, samples };
}

describe('laws of the frame', () => {
  const { width, height } = map.lens;
  const straight = measured(picture, outlineOf(map, covariance));

  it('swaps left and right in a mirrored picture and turns the other way', () => {
    const mirrored = rearranged(picture, (x, y) => [width - 1 - x, y]);
    const [a, b, c, d] = map.corners.map(([x, y]) => [width - 1 - x, y]) as unknown as Corners;
    const other = measured(
      mirrored,
      outlineOf(cardMapOf([b, a, d, c], map.sizeMm, map.lens), covariance),
    );
    // Columns fall elsewhere on the sides: allowed a tenth of a point and 0.01 degrees.
    expect(Math.abs(other.centering.leftRight[0] - straight.centering.leftRight[1])).toBeLessThan(
      0.1,
    );
    expect(Math.abs(other.centering.topBottom[0] - straight.centering.topBottom[0])).toBeLessThan(
      0.1,
    );
    expect(Math.abs(other.rotationDeg + straight.rotationDeg)).toBeLessThan(0.01);
  });

  it('turns the answer with a picture turned half round', () => {
    const turned = rearranged(picture, (x, y) => [width - 1 - x, height - 1 - y]);
    const [a, b, c, d] = map.corners.map(([x, y]) => [
      width - 1 - x,
      height - 1 - y,
    ]) as unknown as Corners;
    const other = measured(
      turned,
      outlineOf(cardMapOf([c, d, a, b], map.sizeMm, map.lens), covariance),
    );
    expect(Math.abs(other.centering.leftRight[0] - straight.centering.leftRight[1])).toBeLessThan(
      0.1,
    );
    expect(Math.abs(other.centering.topBottom[0] - straight.centering.topBottom[1])).toBeLessThan(
      0.1,
    );
    expect(Math.abs(other.rotationDeg - straight.rotationDeg)).toBeLessThan(0.01);
  });

  it('never states a smaller doubt for an outline known half as well', () => {
    const doubled = measured(
      picture,
      outlineOf(
        map,
        covariance.map((value) => 4 * value),
      ),
    );
    for (const i of [0, 1] as const)
      expect(doubled.centering.sd[i]).toBeGreaterThan(1.5 * straight.centering.sd[i]);
  });

  it('is the same at once as with all marks, along an outline that a hand moved', () => {
    const corners = map.corners.map(([x, y], i) => [x + 5 - 2 * i, y]) as unknown as Corners;
    const known = { sizeMm: map.sizeMm, dpi: null, raking: [] };
    const outline = outlineByHand(picture, corners, known);
    const quick = bordersAlong(picture, outline, known);
    const { outline: same, size, frame } = faceAlong(picture, outline, known);
    expect(quick).toMatchObject({ outline: same, size, frame });
    expect(quick.frame).not.toBeNull();
  });

  it('never states a smaller doubt for twice the noise', () => {
    const loud = measured(drawn({ ...drawing, noise: 0.008 }), outlineOf(map, covariance));
    for (const i of [0, 1] as const)
      expect(loud.centering.sd[i]).toBeGreaterThanOrEqual(straight.centering.sd[i]);
  });
});
