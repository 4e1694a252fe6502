import { expect, it } from 'vitest';
import { cutEdgesOf } from './cut-edge.ts';
import type { Profile } from './profile.ts';

/** A profile blurred by sums over a fine grid, by no formula that the fit uses. */
function blurred(lightAt: (mm: number) => readonly number[], sigma: number): Profile {
  const off = Float64Array.from({ length: 23 }, (_, i) => i * 0.5 - 5);
  const light = new Float64Array(3 * off.length);
  off.forEach((u, i) => {
    let total = 0;
    for (let v = -6 * sigma; v <= 6 * sigma; v += 0.02) {
      const weight = Math.exp((-v * v) / (2 * sigma * sigma));
      total += weight;
      lightAt(u + v).forEach((value, c) => {
        light[3 * i + c] = light[3 * i + c]! + weight * value;
      });
    }
    for (let c = 0; c < 3; c++) light[3 * i + c] = light[3 * i + c]! / total;
  });
  return { off, light };
}

/** Where a profile is steepest, between its samples by a parabola. */
function steepestOf({ off, light }: Profile): number {
  const change = Array.from(off, (_, i) =>
    i === 0 || i === off.length - 1
      ? 0
      : Math.hypot(...[0, 1, 2].map((c) => light[3 * i + 3 + c]! - light[3 * i - 3 + c]!)),
  );
  const at = change.indexOf(Math.max(...change));
  const [before, here, after] = [change[at - 1]!, change[at]!, change[at + 1]!];
  return off[at]! + (0.25 * (before - after)) / (before - 2 * here + after);
}

const border = [0.05, 0.25, 0.3];
const ground = [0.6, 0.62, 0.6];
const sharp = blurred((u) => (u < 0 ? border : ground), 0.8);
const four = (one: Profile) => [one, sharp, sharp, sharp];

it('leaves a clean step where it is steepest', () => {
  const [edge] = cutEdgesOf(four(sharp), 1, 5);
  // Measured 0.00 with a spread of 0.11; allowed is a fortieth of a pixel.
  expect(Math.abs(edge!.off)).toBeLessThan(0.025);
  expect(edge!.sd).toBeLessThan(0.2);
});

it('finds the cut edge under a shadow that draws the steepest place outward', () => {
  const shadow = blurred(
    (u) => (u < 0 ? border : ground.map((v) => v * (1 - 0.7 * Math.exp(-u / 3)))),
    0.8,
  );
  expect(steepestOf(shadow)).toBeGreaterThan(0.4);
  const [edge] = cutEdgesOf(four(shadow), 1, 5);
  expect(Math.abs(edge!.off)).toBeLessThan(0.2);
});

it('finds the cut edge inside a side face', () => {
  const [blue, pale, wood] = [
    [0.23, 0.15, 0.38],
    [0.29, 0.24, 0.25],
    [0.24, 0.19, 0.06],
  ];
  const faced = blurred((u) => (u < -1.5 ? blue : u < 0.5 ? pale : wood)!, 0.8);
  const plain = blurred((u) => (u < 0 ? blue : wood)!, 0.8);
  expect(steepestOf(faced)).toBeGreaterThan(0);
  const [edge] = cutEdgesOf([faced, plain, plain, plain], 1, 5);
  expect(Math.abs(edge!.off + 1.5)).toBeLessThan(0.5);
});

it('is less sure where the step is small beside what else changes', () => {
  const steep = (step: number) =>
    blurred((u) => (u < 0 ? border : border.map((v) => v + step + 0.05 * u)), 0.8);
  const [clear] = cutEdgesOf(four(steep(0.3)), 1, 5);
  const [faint] = cutEdgesOf(four(steep(0.02)), 1, 5);
  expect(faint!.sd).toBeGreaterThan(2 * clear!.sd);
});
