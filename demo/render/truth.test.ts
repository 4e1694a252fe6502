import { expect, it } from 'vitest';
import { sightOf } from './camera.ts';
import { randomScene } from './random.ts';
import { truthOf } from './truth.ts';

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
