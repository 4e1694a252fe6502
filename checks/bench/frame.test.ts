import { describe, expect, it } from 'vitest';
import { type Frame, frameByHand, frameNear, frameOf } from '../../src/bench/index.ts';
import { cardWith, outlineOf, PRINT, type Print, photoMap } from './cards.ts';
import { coverageOf } from './coverage.ts';
import { drawn } from './drawn-card.ts';

// Drawn cards: every edge is known exactly, drawn by area coverage, 5.8 pixels a millimetre.

describe('coverage', () => {
  it('is the area of a triangle, pixel by pixel', () => {
    const covered = coverageOf(
      [
        [-0.5, -0.5],
        [3.5, -0.5],
        [-0.5, 1.5],
      ],
      4,
      2,
    );
    // A right triangle of 4 by 2, cut into pixels by hand: exact in binary.
    expect([...covered]).toEqual([1, 1, 0.75, 0.25, 0.75, 0.25, 0, 0]);
  });

  it('does not depend on which way round a polygon runs, and sums to its area', () => {
    const hexagon: [number, number][] = [
      [3.2, 1.1],
      [7.9, 2.3],
      [9.4, 6.6],
      [6.1, 9.2],
      [2.2, 8.3],
      [0.7, 4.4],
    ];
    const one = coverageOf(hexagon, 12, 12);
    const other = coverageOf([...hexagon].reverse(), 12, 12);
    const area = hexagon.reduce((sum, [x, y], i) => {
      const [u, v] = hexagon[(i + 1) % 6] as [number, number];
      return sum + (x * v - u * y) / 2;
    }, 0);
    one.forEach((value, i) => {
      expect(value).toBeCloseTo(other[i] as number, 12);
    });
    expect(one.reduce((sum, value) => sum + value, 0)).toBeCloseTo(area, 12);
  });
});

function found(print: Partial<Print>, more: object = {}): Frame {
  const answer = frameOf(drawn({ ...cardWith(print), ...more }), outlineOf(photoMap()));
  expect(answer.whyNot).toBeNull();
  return answer.frame as Frame;
}

function worst(frame: Frame, borders: Print['borders']): number {
  const sides = ['left', 'right', 'top', 'bottom'] as const;
  return Math.max(
    ...sides.map((side) => Math.abs((frame.bordersMm?.[side] ?? Number.NaN) - borders[side])),
  );
}

describe('the frame of a drawn card', () => {
  // Measured: 0.001 mm where art meets the border; a thin line of 0.3 or 0.4 mm is less than 2.5
  // pixels wide here, its two edges blur into each other, and its outer one is seen 0.056 mm early.
  it.each([
    ['plain', 0.003],
    ['line', 0.07],
    ['double', 0.04],
  ] as const)('is the outermost line, style %s', (style, allowed) => {
    const frame = found({ style });
    expect(worst(frame, PRINT.borders)).toBeLessThan(allowed);
    // Measured 1e-4 degrees, allowed 1e-3.
    expect(Math.abs(frame.rotationDeg)).toBeLessThan(1e-3);
  });

  it.each([-1.5, -0.4, 0.7, 2])(
    'is measured along the mid-lines where the print is turned by %d°',
    (turn) => {
      const frame = found({ turn, style: 'plain' });
      // Measured 0.001 mm and 0.001 degrees, allowed three times as much.
      expect(worst(frame, PRINT.borders)).toBeLessThan(0.003);
      expect(Math.abs(frame.rotationDeg - turn)).toBeLessThan(0.003);
    },
  );

  it('gives shares that add up to 100 and agree with the borders', () => {
    const { centering } = found({ style: 'plain' });
    const { left, right, top, bottom } = PRINT.borders;
    expect(centering.leftRight[0] + centering.leftRight[1]).toBeCloseTo(100, 9);
    expect(centering.topBottom[0] + centering.topBottom[1]).toBeCloseTo(100, 9);
    // Measured 0.005 points, allowed 0.02.
    expect(Math.abs(centering.leftRight[0] - (100 * left) / (left + right))).toBeLessThan(0.02);
    expect(Math.abs(centering.topBottom[0] - (100 * top) / (top + bottom))).toBeLessThan(0.02);
  });

  it('is refused where art reaches the cut edge on every side', () => {
    const bare = { left: -1, right: -1, top: -1, bottom: -1 };
    const answer = frameOf(
      drawn(cardWith({ borders: bare, style: 'plain' })),
      outlineOf(photoMap()),
    );
    expect(answer.frame).toBeNull();
    expect(answer.whyNot).toMatch(/art seems to reach the cut edge/);
  });

  it('is refused where one side has none, and that side is named', () => {
    const answer = frameOf(
      drawn(cardWith({ borders: { ...PRINT.borders, bottom: -1 }, style: 'plain' })),
      outlineOf(photoMap()),
    );
    expect(answer.frame).toBeNull();
    expect(answer.whyNot).toMatch(/along the bottom side/);
  });

  it('is the same when its corners are set by hand where it lies, or near', () => {
    const picture = drawn(cardWith({ style: 'plain' }));
    const outline = outlineOf(photoMap());
    const { frame } = frameOf(picture, outline);
    const corners = (frame as Frame).corners;
    const hand = frameByHand(outline, corners);
    const nudged = corners.map(([x, y]) => [x + 0.8, y - 0.6]) as unknown as typeof corners;
    const near = frameNear(picture, outline, nudged);
    for (const i of [0, 1] as const) {
      expect(hand.centering.leftRight[i]).toBeCloseTo(frame?.centering.leftRight[i] as number, 6);
      // Measured 0.001 points, allowed 0.02.
      const moved = near.centering.leftRight[i] - (frame?.centering.leftRight[i] as number);
      expect(Math.abs(moved)).toBeLessThan(0.02);
    }
  });
});
