import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { straightened } from '../geometry/lens.ts';
import { poseOf } from './pose.ts';

type Point = [number, number];

// Made with OpenCV 4.6.0 by checks/makers/bench/outline.py.
const witness: {
  readonly width: number;
  readonly height: number;
  readonly poses: readonly { size: Point; focal: number; corners: Point[] }[];
  readonly bows: readonly { k1: number; seen: Point[]; ideal: Point[] }[];
} = JSON.parse(readFileSync('checks/fixtures/bench/outline.json', 'utf8'));

const unit = Math.hypot(witness.width, witness.height) / 2;
const inUnits = (corners: readonly Point[]) =>
  Float64Array.from(
    corners.flatMap(([x, y]) => [
      (x - (witness.width - 1) / 2) / unit,
      (y - (witness.height - 1) / 2) / unit,
    ]),
  );

describe('the pose of a card that OpenCV projected', () => {
  it.each(witness.poses)('fits a card of $size seen at $focal half diagonals', (pose) => {
    const [w, h] = pose.size;
    const { misfit, focal } = poseOf(inUnits(pose.corners), w / h, 0.003);
    // What is left is the prior of the focal length, at most (ln(2.2 / 1.5) / 0.7)² = 0.3.
    expect(misfit).toBeLessThan(0.6);
    expect(Math.abs(Math.log(focal / pose.focal))).toBeLessThan(0.35);
  });

  it.each(witness.poses)('misfits a card of another shape than $size', (pose) => {
    const [w, h] = pose.size;
    const right = poseOf(inUnits(pose.corners), w / h, 0.003).misfit;
    const wrong = poseOf(inUnits(pose.corners), (w / h) * 1.04, 0.003).misfit;
    expect(wrong).toBeGreaterThan(right);
  });
});

it.each(witness.bows)('takes the bow of $k1 out as OpenCV does', ({ k1, seen, ideal }) => {
  seen.forEach((point, i) => {
    const [x, y] = straightened({ k1, width: witness.width, height: witness.height }, point);
    // The file carries all digits: measured 5e-13 pixels, allowed 1e-9.
    expect(x).toBeCloseTo((ideal[i] as Point)[0], 9);
    expect(y).toBeCloseTo((ideal[i] as Point)[1], 9);
  });
});
