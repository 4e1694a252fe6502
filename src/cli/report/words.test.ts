import { describe, expect, it } from 'vitest';
import { counted, percent } from './words.ts';

describe('percent', () => {
  it.each([
    [1, '>99 %'],
    [0.9999, '>99 %'],
    [0.994, '99 %'],
    [0.5, '50 %'],
    [0.0049, '<1 %'],
    [0, '<1 %'],
  ])('%d is %s', (p, words) => {
    expect(percent(p)).toBe(words);
  });
});

it('counts in words', () => {
  expect([counted(1, 'slip'), counted(0, 'slip')]).toEqual(['1 slip', '0 slips']);
});
