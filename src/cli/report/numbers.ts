import type { MeasuredSize } from '../../bench/index.ts';

/** A value with the half width of its 95 % interval. */
export function withDoubt(value: number, sd: number): string {
  return `${fixed(value, 2)} ± ${half(sd, 2)}`;
}

/** A number to so many places; nothing has no sign. */
export function fixed(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? (0).toFixed(places) : text;
}

/** Half the width of a 95 % interval, never rounded down to nothing. */
export function half(sd: number, places: number): string {
  return Math.max(1.96 * sd, 10 ** -places).toFixed(places);
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
