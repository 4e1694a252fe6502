import { describe, expect, it } from 'vitest';
import type { Corners } from '../geometry/points.ts';
import { outlineByHand } from './by-hand.ts';

const picture = { width: 400, height: 500 };
const square: Corners = [
  [30, 40],
  [156, 40],
  [156, 216],
  [30, 216],
];

describe('an outline set by hand', () => {
  it('takes the corners as they are and measures the size at the dots an inch', () => {
    const outline = outlineByHand(picture, square, { sizeMm: null, dpi: 50.8 });
    expect(outline.corners).toEqual(square);
    expect(outline.sizeMm).toEqual([63, 88]);
    expect(outline.p).toBe(1);
  });

  it('has no size in millimetres where neither size nor dots an inch are told', () => {
    const outline = outlineByHand(picture, square, { sizeMm: null, dpi: null });
    expect(outline.sizeMm).toBeNull();
    expect(outline.aspect).toBeCloseTo(126 / 176, 12);
  });

  it('refuses corners that cross over', () => {
    const crossed: Corners = [square[0], square[2], square[1], square[3]];
    expect(() => outlineByHand(picture, crossed, { sizeMm: null, dpi: null })).toThrow(RangeError);
  });
});
