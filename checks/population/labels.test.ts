import { expect, test } from 'vitest';
import { scoresOf } from './scores.ts';

const seeds = [101, 102, 103, 104, 105, 106, 107, 108];

// Measured on other worlds: F1 0.97, 0.94, 0.88; lumps 0.80, 0.61; shrunk95 held 0.94, 0.95, 0.93. Eight
// worlds of 14 printings scatter by about 0.015 to 0.03, 0.1 and 0.02.
test('labels of invented services are matched, lumps recognised and rates held', () => {
  const easy = scoresOf(14, 'easy', seeds);
  expect(easy.f1).toBeGreaterThan(0.93);
  expect(easy.lumpF1).toBeGreaterThan(0.45);
  expect(easy.covered).toBeGreaterThan(0.88);
  expect(easy.sparse).toBeLessThan(0.7);
  expect(easy.dense).toBeLessThan(1.1);
  const medium = scoresOf(14, 'medium', seeds);
  expect(medium.f1).toBeGreaterThan(0.87);
  expect(scoresOf(14, 'hard', seeds).f1).toBeGreaterThan(0.78);
});

// Stated and found shares differ by chance by up to 0.13 in a bin of 40 pairs, and the bins next to
// certainty, with hundreds of pairs, by far less: measured 0.01 to 0.05 on hard worlds.
test('a probability of a match is what it says', () => {
  const { gap, bins } = scoresOf(14, 'hard', seeds);
  expect(gap).toBeLessThan(0.2);
  for (const [stated, found, pairs] of bins)
    if (pairs > 250) expect(Math.abs(stated - found)).toBeLessThan(0.08);
  expect(bins.length).toBeGreaterThan(2);
});
