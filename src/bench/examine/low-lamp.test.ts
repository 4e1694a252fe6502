import { expect, it } from 'vitest';
import { pictureOf } from '../picture.ts';
import { isTwin } from './low-lamp.ts';

const grey = (width: number, level: number) =>
  pictureOf(width, 4, new Uint8Array(width * 4 * 3).fill(level));

it('takes another picture of the same size for the twin of one under a low lamp', () => {
  expect(isTwin(grey(6, 90), grey(6, 120))).toBe(true);
  expect(isTwin(grey(6, 90), grey(8, 120))).toBe(false);
  expect(isTwin(grey(6, 90), grey(6, 90))).toBe(false);
});
