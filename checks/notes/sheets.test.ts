import { describe, expect, it } from 'vitest';
import { readNotes } from '../../src/evidence/index.ts';
import { scoreOf, total } from './score.ts';
import { sheets } from './sheet.ts';

describe('sheets written by hand', () => {
  const scores = sheets('').map(scoreOf);
  const sum = total(scores);

  // The figures that the project set itself; docs/methods/notes.md has what was measured.
  it('finds nine claims in ten, and nine of ten that it names are there', () => {
    expect(sum.found / sum.stated).toBeGreaterThanOrEqual(0.95);
    expect(sum.found / sum.named).toBeGreaterThanOrEqual(0.93);
  });

  it('finds their sources', () => {
    expect(sum.sourced / sum.found).toBeGreaterThanOrEqual(0.93);
  });

  it('leaves every day open that can be read two ways', () => {
    expect(sum.open).toBeGreaterThan(10);
    expect(sum.leftOpen).toBe(sum.open);
  });
});

describe('size', () => {
  // A quiet machine takes under 0.3 s for each; ten times that is allowed for a busy one.
  it.each([
    ['letters', 'a'.repeat(1_000_000)],
    ['days', '3/4/96 '.repeat(150_000)],
    ['brackets', '('.repeat(1_000_000)],
    ['hashes', ` #${' #'.repeat(500_000)}`],
  ])('takes a line of a megabyte: %s', (_, text) => {
    const start = performance.now();
    expect(readNotes(text).lines).toHaveLength(1);
    expect(performance.now() - start).toBeLessThan(3000);
  });
});
