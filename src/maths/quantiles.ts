import { placed } from './placed.ts';

/** The value below which a share of the numbers lies, NaN left out; NaN for none. */
export function quantileOf(values: ArrayLike<number>, share: number): number {
  const own = new Float64Array(values);
  let count = 0;
  for (let i = 0; i < own.length; i++) {
    const value = own[i] as number;
    if (!Number.isNaN(value)) own[count++] = value;
  }
  if (count === 0) return Number.NaN;
  const numbers = own.subarray(0, count);
  const at = share * (count - 1);
  const low = Math.floor(at);
  const a = placed(numbers, low);
  if (low === at) return a;
  let b = Number.POSITIVE_INFINITY;
  for (let i = low + 1; i < count; i++) b = Math.min(b, numbers[i] as number);
  return a + (at - low) * (b - a);
}

/** The middle value; NaN of none. */
export function medianOf(values: ArrayLike<number>): number {
  const half = values.length >> 1;
  const rest = new Float64Array(values);
  const upper = placed(rest, half);
  if (rest.length % 2 === 1) return upper;
  let lower = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < half; i++) lower = Math.max(lower, rest[i] as number);
  return (lower + upper) / 2;
}
