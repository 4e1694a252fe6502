import { ownUnit, unitNamed } from './units.ts';
import { keyOf } from './words.ts';

/** A number with what it measures, in mm, g, lpi or degrees; other units are kept as they are. */
export interface NumberValue {
  readonly is: 'number';
  readonly value: number;
  /** 95 % lie within it; null where it is not told. */
  readonly tolerance: number | null;
  /** Half of the last place as written. */
  readonly rounding: number;
  /** `length`, `mass`, `ruling`, `angle`, a unit of its own, or empty for a pure number. */
  readonly measure: string;
}

/** A value of a trait: known to be absent, a word as written, or a number. */
export type TraitValue =
  | { readonly is: 'none' }
  | { readonly is: 'word'; readonly word: string }
  | NumberValue;

/** A value as read, or what was expected in its place. */
export type ValueReading =
  | { readonly ok: true; readonly value: TraitValue }
  | { readonly ok: false; readonly expected: string };

const NUMBER = String.raw`[-+]?(?:\d+(?:[.,]\d+)?|\.\d+)`;
const WITH_TOLERANCE = new RegExp(`^(${NUMBER})\\s*±\\s*(${NUMBER})\\s*(\\D*)$`, 'u');
const WITH_UNIT = new RegExp(
  `^(${NUMBER})\\s*(mm|cm|m|in|inch|"|µm|μm|um|g|mg|kg|oz|lpi|l/in|l/cm|lpcm|deg|°|rad)$`,
  'iu',
);
const BARE = new RegExp(`^${NUMBER}$`);
const EXPECTED = 'a word, none, or a number with its tolerance and unit, such as 1.79±0.05 g';

/**
 * Reads the value of a trait or an observation: `none`, a word, or `number±tolerance unit`, also
 * `number unit` alone. What holds a ± and is no number is a fault, and so is a tolerance that is
 * not above 0.
 */
export function readValue(text: string): ValueReading {
  const plain = text
    .trim()
    .normalize('NFC')
    .replace(/\+\/-|\+-/g, '±');
  if (plain === 'none') return { ok: true, value: { is: 'none' } };
  const [, number, tolerance, unit] = WITH_TOLERANCE.exec(plain) ?? [];
  if (number !== undefined && tolerance !== undefined) {
    const value = numberOf(number, tolerance, unit ?? '');
    if ((value.tolerance ?? 0) > 0) return { ok: true, value };
    return { ok: false, expected: 'a tolerance above 0, such as 1.79±0.05 g' };
  }
  if (plain.includes('±')) return { ok: false, expected: EXPECTED };
  const [, alone, itsUnit] = WITH_UNIT.exec(plain) ?? [];
  if (alone !== undefined) return { ok: true, value: numberOf(alone, null, itsUnit ?? '') };
  if (keyOf(plain) === '') return { ok: false, expected: EXPECTED };
  return { ok: true, value: { is: 'word', word: plain } };
}

/** A word that is a bare number, as a number of the measure that others of its trait have. */
export function inMeasure(value: TraitValue, measure: string): TraitValue {
  if (value.is !== 'word' || !BARE.test(value.word)) return value;
  return { ...numberOf(value.word, null, ''), measure };
}

function numberOf(number: string, tolerance: string | null, unit: string): NumberValue {
  const { measure, factor } = unitNamed(unit);
  const decimals = /[.,](\d+)/.exec(number)?.[1]?.length ?? 0;
  return {
    is: 'number',
    value: plainNumber(number) * factor,
    tolerance: tolerance === null ? null : plainNumber(tolerance) * factor,
    rounding: 0.5 * 10 ** -decimals * factor,
    measure,
  };
}

function plainNumber(text: string): number {
  return Number(text.replace(',', '.'));
}

/** A value in words, numbers in the unit that they are kept in. */
export function sayValue(value: TraitValue): string {
  if (value.is === 'none') return 'none';
  if (value.is === 'word') return value.word;
  const unit = ownUnit(value.measure);
  const [number, within] = [value.value, value.tolerance].map((one) =>
    one === null ? '' : String(Number(one.toPrecision(4))),
  );
  const gap = unit === '' || unit === '°' ? '' : '\u00a0';
  return `${number}${within ? `±${within}` : ''}${gap}${unit}`;
}
