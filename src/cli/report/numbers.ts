import type { MeasuredSize } from '../../bench/index.ts';
import { sayDoubt } from '../../evidence/index.ts';

/** A value with the half width of its 95 % interval. */
export function withDoubt(value: number, sd: number): string {
  return `${fixed(value, 2)} ± ${sayDoubt(sd, 2)}`;
}

/** A number to so many places; nothing has no sign. */
export function fixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? (0).toFixed(places) : text;
}

/** Width and height, with their doubt where they were measured. */
export function sizeNumbers({
  mm: [width, height],
  sdMm,
}: MeasuredSize): readonly [string, string] {
  if (sdMm === null) return [String(width), String(height)];
  return [withDoubt(width, sdMm[0]), withDoubt(height, sdMm[1])];
}

/** An amount of money that is an estimate: three digits that matter, no more. */
export function amount(value: number): string {
  if (value >= 100) return String(Number(value.toPrecision(3)));
  return value.toFixed(value >= 10 ? 1 : 2);
}
