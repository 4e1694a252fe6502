import type { Region } from './types.ts';

/** Where a trait is, as `traits.csv` writes it: `x0 y0 x1 y1` in mm, `back` before it for the back. */
export function regionOf(text: string): Region | null {
  const numbers = (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
  const [x0, y0, x1, y1] = numbers;
  if (numbers.length !== 4 || x0 === undefined || y0 === undefined) return null;
  if (x1 === undefined || y1 === undefined) return null;
  const boxMm = [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)] as const;
  return { face: /\bback\b/i.test(text) ? 'back' : 'front', boxMm };
}
