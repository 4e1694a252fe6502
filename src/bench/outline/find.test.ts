import { describe, expect, it } from 'vitest';
import type { Corners, PointPx, SizeMm } from '../geometry/points.ts';
import { encodedOf } from '../light/srgb.ts';
import { type Picture, pictureOf } from '../picture.ts';
import { findOutline } from './find.ts';
import { refitOutline } from './refit.ts';

type Point = readonly [number, number];
type Colour = readonly [number, number, number];

/** Area of the pixel about (x, y) that a convex polygon covers: clipped to the pixel, exactly. */
function coverage(polygon: readonly Point[], x: number, y: number): number {
  let clipped = polygon;
  const sides: readonly [0 | 1, number, 1 | -1][] = [
    [0, x - 0.5, 1],
    [0, x + 0.5, -1],
    [1, y - 0.5, 1],
    [1, y + 0.5, -1],
  ];
  for (const [axis, bound, sign] of sides) {
    const kept: Point[] = [];
    clipped.forEach((p, i) => {
      const q = clipped[(i + 1) % clipped.length] as Point;
      const dp = sign * (p[axis] - bound);
      const dq = sign * (q[axis] - bound);
      if (dp >= 0) kept.push(p);
      if (dp > 0 !== dq > 0 && dp !== dq) {
        const t = dp / (dp - dq);
        kept.push([p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])]);
      }
    });
    clipped = kept;
    if (clipped.length === 0) return 0;
  }
  let area = 0;
  clipped.forEach((p, i) => {
    const q = clipped[(i + 1) % clipped.length] as Point;
    area += p[0] * q[1] - q[0] * p[1];
  });
  return Math.abs(area) / 2;
}

interface Drawn {
  readonly width: number;
  readonly height: number;
  readonly centre: Point;
  readonly perMm: number;
  readonly turnDeg: number;
  readonly sizeMm: SizeMm;
  readonly ground: Colour;
  readonly border: Colour;
  readonly art: Colour;
}

const plain: Drawn = {
  width: 420,
  height: 520,
  centre: [207.3, 262.6],
  perMm: 4.4,
  turnDeg: 6,
  sizeMm: [63, 88],
  ground: [0.22, 0.2, 0.17],
  border: [0.05, 0.12, 0.3],
  art: [0.5, 0.4, 0.2],
};

function placed({ centre, perMm, turnDeg, sizeMm }: Drawn, [x, y]: Point): PointPx {
  const angle = (turnDeg * Math.PI) / 180;
  const u = (x - sizeMm[0] / 2) * perMm;
  const v = (y - sizeMm[1] / 2) * perMm;
  return [
    centre[0] + u * Math.cos(angle) - v * Math.sin(angle),
    centre[1] + u * Math.sin(angle) + v * Math.cos(angle),
  ];
}

function cornersOf(drawn: Drawn): Corners {
  const [w, h] = drawn.sizeMm;
  const points: readonly Point[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ];
  return points.map((point) => placed(drawn, point)) as unknown as Corners;
}

/** A rectangle in card millimetres with round tips, as a polygon with 16 sides to each tip. */
function rounded([x0, y0, x1, y1]: readonly number[], radius: number): readonly Point[] {
  const tips: readonly [number, number, number][] = [
    [x0! + radius, y0! + radius, 180],
    [x1! - radius, y0! + radius, 270],
    [x1! - radius, y1! - radius, 0],
    [x0! + radius, y1! - radius, 90],
  ];
  return tips.flatMap(([cx, cy, from]) =>
    Array.from({ length: 17 }, (_, i): Point => {
      const angle = ((from + (i * 90) / 16) * Math.PI) / 180;
      return [cx + radius * Math.cos(angle), cy + radius * Math.sin(angle)];
    }),
  );
}

/** A card on a plain ground, each pixel mixed in light by the areas that it sees. */
function drawn(of: Drawn): Picture {
  const [w, h] = of.sizeMm;
  const card = rounded([0, 0, w, h], 3).map((point) => placed(of, point));
  const frame = rounded([3.2, 3.6, w - 2.7, h - 3.1], 0.01).map((point) => placed(of, point));
  const samples = new Uint8Array(of.width * of.height * 3);
  for (let y = 0; y < of.height; y++)
    for (let x = 0; x < of.width; x++) {
      const a = coverage(card, x, y);
      const b = coverage(frame, x, y);
      for (let c = 0; c < 3; c++)
        samples[(y * of.width + x) * 3 + c] = Math.round(
          255 * encodedOf(of.ground[c]! * (1 - a) + of.border[c]! * (a - b) + of.art[c]! * b),
        );
    }
  return pictureOf(of.width, of.height, samples);
}

function largestError(found: Corners, truth: Corners): number {
  return Math.max(...found.map(([x, y], i) => Math.hypot(x - truth[i]![0], y - truth[i]![1])));
}

describe('the outline of a card drawn by exact areas', () => {
  const picture = drawn(plain);
  const truth = cornersOf(plain);
  const known = { sizeMm: plain.sizeMm, dpi: null };

  it('is found to a small part of a pixel', () => {
    const { hypotheses, trouble } = findOutline(picture, known);
    expect(trouble).toBeNull();
    // Measured 0.02, allowed 0.06: the samples are rounded to 256 levels.
    expect(largestError(hypotheses[0]!.corners, truth)).toBeLessThan(0.06);
  });

  it('is found without the size of the card, with its aspect', () => {
    const { hypotheses } = findOutline(picture, { sizeMm: null, dpi: null });
    expect(largestError(hypotheses[0]!.corners, truth)).toBeLessThan(0.06);
    // Without a size, tilt and aspect are told apart by convergence alone.
    expect(Math.abs(hypotheses[0]!.aspect - 63 / 88)).toBeLessThan(0.004);
  });

  it('is drawn onto the edges from corners that were set by hand', () => {
    const guess = truth.map(([x, y], i) => [x + [2, -1.5, 2, -2][i]!, y + [-1, 2, 1.5, -2][i]!]);
    const refit = refitOutline(picture, guess as unknown as Corners, known);
    expect(largestError(refit.corners, truth)).toBeLessThan(0.06);
  });

  it('gives the size in millimetres at the dots an inch of a scan', () => {
    const { hypotheses } = findOutline(picture, { sizeMm: null, dpi: plain.perMm * 25.4 });
    const [width, height] = hypotheses[0]!.sizeMm as SizeMm;
    expect(width).toBeCloseTo(63, 1);
    expect(height).toBeCloseTo(88, 1);
    expect(hypotheses[0]!.lens.k1).toBe(0);
  });
});

it('sees no card in a plain picture and says so', () => {
  const samples = new Uint8Array(300 * 400 * 3).fill(120);
  const { hypotheses, trouble } = findOutline(pictureOf(300, 400, samples), {
    sizeMm: [63, 88],
    dpi: null,
  });
  expect(hypotheses.every(({ p }) => p < 0.5)).toBe(true);
  expect(trouble?.what).toBe('no-card');
});
