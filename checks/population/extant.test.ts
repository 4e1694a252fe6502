import { expect, test } from 'vitest';
import { chance } from '../../src/maths/index.ts';
import { uneven } from '../../src/population/index.ts';

/** Share of trials in which the interval held how many copies there were. */
function covered(shape: number, trials: number): number {
  const random = chance(11);
  let held = 0;
  let usable = 0;
  for (let trial = 0; trial < trials; trial++) {
    const copies = 20 + random.below(180);
    const mean = 0.15 + 0.7 * random.uniform();
    const often: number[] = [];
    for (let copy = 0; copy < copies; copy++) {
      const rate = (mean * random.gamma(shape)) / shape;
      let times = -1;
      for (let left = rate; left > 0; times++) left += Math.log(random.uniform());
      if (times > 0) often[times - 1] = (often[times - 1] ?? 0) + 1;
    }
    for (let i = 0; i < often.length; i++) often[i] ??= 0;
    if (often.length < 2) continue;
    const { interval95 } = uneven(often, Number.POSITIVE_INFINITY);
    usable += 1;
    if (interval95[0] <= copies && copies <= interval95[1]) held += 1;
  }
  return held / usable;
}

// 95 % are claimed; 90 % (even) and 80 % (uneven) must be held. Measured on 400 trials each 0.92 and
// 0.96; of 150 a true 0.92 falls under 0.86 once in two hundred times.
test('the number of copies lies in its interval, where copies turn up alike and where they do not', () => {
  expect(covered(50, 150)).toBeGreaterThan(0.86);
  expect(covered(1, 150)).toBeGreaterThan(0.88);
});

test('a bound from above cuts the answer off, and more seen again brings it down', () => {
  const wide = uneven([20, 3], Number.POSITIVE_INFINITY);
  expect(uneven([20, 3], 60).interval95[1]).toBeLessThanOrEqual(60);
  expect(uneven([10, 8], Number.POSITIVE_INFINITY).median).toBeLessThan(wide.median);
});

test('a number is never below the copies that were seen', () => {
  for (const often of [
    [1, 1],
    [0, 3],
    [40, 1, 1],
  ])
    expect(uneven(often, 1e9).interval95[0]).toBeGreaterThanOrEqual(
      often.reduce((a, b) => a + b, 0),
    );
});
