import type { Picture } from '../picture.ts';

/** Light of an sRGB value, both 0 to 1 (`iec:61966-2-1`). */
export function linearOf(value: number): number {
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/** sRGB value of light, both 0 to 1, the inverse of `linearOf` (`iec:61966-2-1`). */
export function encodedOf(light: number): number {
  return light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** Weights of linear red, green and blue in luminance (`iec:61966-2-1`, its rounded matrix). */
export const LUMINANCE = [0.2126, 0.7152, 0.0722] as const;

const tables = new Map<number, Float32Array>();

/** Light, 0 to 1, of every sample value that a picture can hold: 256 or 65,536 entries. */
export function lightTable(picture: Pick<Picture, 'samples'>): Float32Array {
  const levels = picture.samples instanceof Uint8Array ? 256 : 65_536;
  const known = tables.get(levels);
  if (known) return known;
  const table = Float32Array.from({ length: levels }, (_, i) => linearOf(i / (levels - 1)));
  tables.set(levels, table);
  return table;
}
