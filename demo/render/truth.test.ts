import { expect, it } from 'vitest';
import { sightOf } from './camera.ts';
import { randomScene } from './random.ts';
import { truthOf } from './truth.ts';
import { MASK_SCALE, whiten } from './wear.ts';

it('has corners, frame and scratches on the card’s own plane', () => {
  const scene = randomScene('raking', 3);
  const { sizeMm } = scene.face!;
  const { pixelOf } = sightOf(scene.camera, sizeMm);
  const truth = truthOf(scene, 1, null);
  expect(truth.outline).toEqual([
    pixelOf([0, 0]),
    pixelOf([63, 0]),
    pixelOf([63, 88]),
    pixelOf([0, 88]),
  ]);
  const frame = truth.frameCornersMm as readonly [number, number][];
  expect(truth.frameCornersPx).toEqual(frame.map((point) => pixelOf(point)));
});

it('measures silvering by what is drawn, clipped to the card', () => {
  const one = {
    centreMm: [0, 40] as const,
    halfMm: [0.6, 5] as const,
    grainMm: 0.3,
    cover: 0.5,
    bare: 0.7,
    seed: 4,
  };
  const marks = { wear: [], creases: [], silvering: [one] };
  const { mask, silvered } = whiten(null, marks, [63, 88], 3);
  const cells = mask.reduce((sum, value) => sum + (value > 0 ? 1 : 0), 0);
  expect(silvered[0]?.areaMm2).toBeCloseTo(cells / MASK_SCALE ** 2, 9);
  expect(cells).toBeGreaterThan(0);
  expect(silvered[0]?.bboxMm[0]).toBeGreaterThanOrEqual(0);
  expect(silvered[0]?.bboxMm[2]).toBeLessThanOrEqual(0.6);
});
