import { describe, expect, it } from 'vitest';
import type { BenchFace } from '../../contract/index.ts';
import { cardBox, dimensionsOf, strokesOf } from './dimensions.ts';
import { type Column, leadersOf } from './leaders.ts';
import { fromBox, moved, toBox, whole, zoomed } from './part.ts';
import { middleOf, type Quad, shrunk, sideMoved } from './quad.ts';

const CARD = [63, 88] as const;

describe('the part that is shown', () => {
  it('keeps the place under the pointer where it is while it is enlarged', () => {
    const box = { x: 100, y: 40, width: 630, height: 880 };
    const pointer = [0.25, 0.75] as const;
    const closer = zoomed(whole(CARD), CARD, 4, pointer);
    const seen = fromBox(closer, box, [100 + 0.25 * 630, 40 + 0.75 * 880]);
    expect(seen[0]).toBeCloseTo(0.25 * 63, 9);
    expect(seen[1]).toBeCloseTo(0.75 * 88, 9);
    expect(closer.width).toBeCloseTo(63 / 4, 9);
  });

  it('never leaves the card, and is all of it at the least', () => {
    expect(zoomed(whole(CARD), CARD, 0.2)).toEqual(whole(CARD));
    const far = moved(zoomed(whole(CARD), CARD, 2), CARD, [9, -9]);
    expect([far.x + far.width, far.y]).toEqual([63, 0]);
  });

  it('is drawn where it is read from', () => {
    const box = { x: 7, y: 3, width: 200, height: 300 };
    const part = { x: 10, y: 20, width: 5, height: 7.5 };
    const [x, y] = fromBox(part, box, toBox(part, box, [12, 24]));
    expect(x).toBeCloseTo(12, 9);
    expect(y).toBeCloseTo(24, 9);
  });
});

describe('a side that is moved', () => {
  const leaning: Quad = [
    [100, 50],
    [400, 90],
    [380, 500],
    [60, 460],
  ];
  const slope = ([x0, y0]: readonly number[], [x1, y1]: readonly number[]) =>
    ((y1 ?? 0) - (y0 ?? 0)) / ((x1 ?? 0) - (x0 ?? 0));

  it('stays parallel, its corners on the neighbouring sides, the far side where it was', () => {
    const [a, b, c, d] = sideMoved(leaning, 0, [3, -12]);
    expect(slope(a, b)).toBeCloseTo(40 / 300, 9);
    expect(slope(d, a)).toBeCloseTo(slope(leaning[3], leaning[0]), 9);
    expect(slope(c, b)).toBeCloseTo(slope(leaning[2], leaning[1]), 9);
    expect([c, d]).toEqual([leaning[2], leaning[3]]);
    // A point of the old side, moved by the step, lies on the new one.
    const [x, y] = middleOf(leaning, 0);
    expect(a[1] + (x + 3 - a[0]) * slope(a, b)).toBeCloseTo(y - 12, 9);
  });

  it('does not move along itself', () => {
    const along = sideMoved(leaning, 2, [320, 40]);
    // The side from lower right to lower left runs (-320, -40): rounding alone.
    along.flat().forEach((at, i) => {
      expect(at).toBeCloseTo(leaning.flat()[i] ?? 0, 9);
    });
  });

  it('keeps its middle where a card is drawn smaller', () => {
    const [a, , c] = shrunk(leaning, 0.5);
    expect([a[0] - c[0], a[1] - c[1]]).toEqual([-140, -225]);
  });
});

describe('numbers on leader lines', () => {
  const column = (x: number): Column => ({ x, top: 0, bottom: 600, taken: [[270, 330]] });

  it('stand on the side of their mark, apart, in order, and not on the words', () => {
    const places = [290, 295, 300, 305, 310, 20].map((y) => [10, y] as const);
    const leaders = leadersOf([...places, [90, 100]], 50, column(-20), column(120));
    expect(leaders.map(({ at }) => at)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(leaders[6]?.number).toEqual([120, 100]);
    const ys = leaders.slice(0, 5).map(({ number }) => number[1]);
    expect(ys.every((y) => y <= 270 || y >= 330)).toBe(true);
    const gaps = ys.slice(1).map((y, k) => y - (ys[k] ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(28);
  });

  it('stand over or under the words beside which their mark lies, whichever is nearer', () => {
    const words = { x: 0, top: 0, bottom: 600, taken: [[580, 620] as const, [-10, 40] as const] };
    const [first, last] = leadersOf(
      [
        [10, 5],
        [10, 599],
      ],
      50,
      words,
      words,
    );
    expect([first?.number[1], last?.number[1]]).toEqual([40, 580]);
  });

  it('move together where there are too many for the room, within it', () => {
    const many = Array.from({ length: 40 }, (_, k) => [10, k] as const);
    const ys = leadersOf(many, 50, column(0), column(100)).map(({ number }) => number[1]);
    // Forty sums of one gap: rounding alone, measured 1.2e-13.
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(-1e-9);
    expect(Math.max(...ys)).toBeLessThanOrEqual(270);
  });
});

const FACE: BenchFace = {
  picture: 'front.jpg',
  width: 700,
  height: 900,
  outline: null,
  size: { mm: [63, 88], sd: [0.06, 0.07], from: 'dpi' },
  frame: {
    corners: [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    borders: { left: 5, right: 4, top: 4.67, bottom: 5.33 },
    bordersSd: null,
    leftRight: [55.6, 44.4],
    topBottom: [46.7, 53.3],
    sd: [0.3, 0.4],
    rotation: 0,
    rotationSd: 0.1,
    byHand: false,
  },
  marks: [],
  limits: [],
  looks: [],
  whyNot: null,
};

describe('dimension lines', () => {
  const box = cardBox(900, 700, CARD);

  it('are to scale and all outside the card', () => {
    const { lines } = dimensionsOf(FACE, box, false);
    expect(lines).toHaveLength(6);
    for (const { way, line } of lines) {
      const [from, to] =
        way === 'across' ? [box.y, box.y + box.height] : [box.x, box.x + box.width];
      expect(line < from || line > to).toBe(true);
    }
    const left = lines.find(
      ({ way, from, edge, line }) => way === 'across' && from === box.x && edge !== line,
    );
    expect((left?.to ?? 0) - (left?.from ?? 0)).toBeCloseTo((5 / 63) * box.width, 9);
  });

  it('say what was measured with its doubt, and shares only where there is room', () => {
    const said = (slim: boolean) =>
      dimensionsOf(FACE, box, slim).labels.flatMap(({ lines }) => lines);
    expect(said(false)).toEqual(
      expect.arrayContaining([
        '63.00 ± 0.12 mm',
        '± 0.14 mm',
        '4.67 mm',
        '55.6 : 44.4',
        '± 0.8 top to bottom',
      ]),
    );
    expect(said(true)).not.toContain('55.6 : 44.4');
  });

  it('lead from the edge outwards', () => {
    const [line, lead] = strokesOf({ way: 'across', line: 134, from: 10, to: 20, edge: 100 });
    expect(line).toBe('M10.0 134.0L20.0 134.0M10.0 130.0L10.0 138.0M20.0 130.0L20.0 138.0');
    expect(lead).toBe('M10.0 100.0L10.0 142.0M20.0 100.0L20.0 142.0');
  });

  it('fit a card into a narrow page and a wide one', () => {
    const slim = cardBox(360, 900, CARD);
    expect(slim.x).toBeGreaterThanOrEqual(64);
    expect(box.all).toBeLessThanOrEqual(700);
    expect(box.width / box.height).toBeCloseTo(63 / 88, 9);
  });
});
