import type { Token } from '../tokens.ts';
import { ERAS, HAN_DIGITS } from '../words/eras.ts';
import { type Found, found } from './found.ts';
import { isDay, type Part } from './part.ts';
import { isYear } from './years.ts';

interface Numeral {
  readonly value: number;
  readonly to: number;
}

/** A number in digits or in Chinese signs below a hundred. */
function numeralAt(tokens: readonly Token[], at: number): Numeral | undefined {
  const token = tokens[at];
  if (token?.kind === 'num' && token.norm.length <= 4) {
    return { value: Number(token.norm), to: at + 1 };
  }
  if (token?.kind !== 'cjk') return undefined;
  const signs: number[] = [];
  let here = at;
  while (signs.length < 4) {
    const value = HAN_DIGITS[tokens[here]?.norm ?? ''];
    if (value === undefined) break;
    signs.push(value);
    here += 1;
  }
  if (signs.length === 0) return undefined;
  return { value: fromSigns(signs), to: here };
}

/** `二十四` is 24, `一九九六` is 1996. */
function fromSigns(signs: readonly number[]): number {
  const ten = signs.indexOf(10);
  if (ten < 0) return signs.reduce((sum, digit) => sum * 10 + digit, 0);
  const tens = ten === 0 ? 1 : signs[ten - 1]!;
  return tens * 10 + (signs[ten + 1] ?? 0);
}

function eraAt(tokens: readonly Token[], at: number): { before: number; to: number } | undefined {
  const token = tokens[at];
  if (token === undefined || (token.kind !== 'cjk' && token.kind !== 'word')) return undefined;
  const word = ERAS[token.norm];
  if (word !== undefined) return { before: word, to: at + 1 };
  if (token.kind !== 'cjk') return undefined;
  const pair = ERAS[token.norm + (tokens[at + 1]?.norm ?? '')];
  return pair === undefined ? undefined : { before: pair, to: at + 2 };
}

const SIGN = { year: ['年', '년'], month: ['月', '월'], day: ['日', '일'] } as const;

function signAt(tokens: readonly Token[], at: number, kind: keyof typeof SIGN): boolean {
  return (SIGN[kind] as readonly string[]).includes(tokens[at]?.norm ?? '');
}

const THIRD: Readonly<Record<string, 'early' | 'mid' | 'late'>> = {
  上旬: 'early',
  初旬: 'early',
  中旬: 'mid',
  下旬: 'late',
  초순: 'early',
  초: 'early',
  중순: 'mid',
  하순: 'late',
  말: 'late',
  初: 'early',
  末: 'late',
};
const SEASON: Readonly<Record<string, number>> = {
  春: 21,
  夏: 22,
  秋: 23,
  冬: 24,
  봄: 21,
  여름: 22,
  가을: 23,
  겨울: 24,
};

function listed<T>(
  table: Readonly<Record<string, T>>,
  tokens: readonly Token[],
  at: number,
): { value: T; to: number } | undefined {
  const one = tokens[at]?.norm ?? '';
  const two = one + (tokens[at + 1]?.norm ?? '');
  if (table[two] !== undefined) return { value: table[two], to: at + 2 };
  return table[one] === undefined ? undefined : { value: table[one], to: at + 1 };
}

/** The year of `1996年` or `平成8年`. */
function signedYear(tokens: readonly Token[], at: number): Numeral | undefined {
  const era = eraAt(tokens, at);
  const numeral = numeralAt(tokens, era?.to ?? at);
  if (!numeral) return undefined;
  const signed = signAt(tokens, numeral.to, 'year');
  if (era) {
    const latin = tokens[at]!.kind === 'word';
    if (!signed && !latin) return undefined;
    return { value: era.before + numeral.value, to: numeral.to + (signed ? 1 : 0) };
  }
  if (!signed) return undefined;
  const plainYear = isYear(tokens[at]) || (numeral.value >= 1850 && numeral.value < 2100);
  const short = numeral.value >= 32 && numeral.value < 100;
  if (!plainYear && !short) return undefined;
  return { value: short ? 1900 + numeral.value : numeral.value, to: numeral.to + 1 };
}

const ERA_LETTERS: Readonly<Record<string, number>> = {
  M: 1867,
  T: 1911,
  S: 1925,
  H: 1988,
  R: 2018,
};

/** `H8.10.20`: the era by its letter. */
export function eraLetter(tokens: readonly Token[], at: number): Found | undefined {
  const before = ERA_LETTERS[tokens[at]?.text ?? ''];
  const [y, dot, m, second, d] = tokens.slice(at + 1, at + 6);
  if (before === undefined || y?.kind !== 'num' || m?.kind !== 'num' || d?.kind !== 'num')
    return undefined;
  if (dot?.text !== '.' || second?.text !== '.' || [y, dot, m, second, d].some((t) => t?.gap)) {
    return undefined;
  }
  const part = { year: before + Number(y.norm), month: Number(m.norm), day: Number(d.norm) };
  const right = y.norm.length <= 2 && isDay(part.day, part.month, part.year);
  return right ? found(at, at + 6, part, 'signs', { trust: 0.9 }) : undefined;
}

/** `1996年3月4日`, `平成8年3月4日`, `1996년 3월 4일`, `1996年春`, `1996年3月上旬`. */
export function eastAsian(tokens: readonly Token[], at: number): Found | undefined {
  const year = signedYear(tokens, at);
  const month = numeralAt(tokens, year?.to ?? at);
  const isMonth = month && signAt(tokens, month.to, 'month') && month.value <= 12;
  if (!isMonth || month.value < 1) {
    if (!year) return undefined;
    const season = listed(SEASON, tokens, year.to);
    const third = season ? undefined : listed(THIRD, tokens, year.to);
    const part: Part = {
      year: year.value,
      ...(season && { code: season.value }),
      ...(third && { third: third.value }),
    };
    return found(at, season?.to ?? third?.to ?? year.to, part, 'signs');
  }
  const stem: Part = { ...(year && { year: year.value }), month: month.value };
  const day = numeralAt(tokens, month.to + 1);
  if (day && signAt(tokens, day.to, 'day')) {
    if (!isDay(day.value, month.value, year?.value)) return undefined;
    return found(at, day.to + 1, { ...stem, day: day.value }, 'signs', { trust: year ? 1 : 0.85 });
  }
  const third = listed(THIRD, tokens, month.to + 1);
  const part: Part = third ? { ...stem, third: third.value } : stem;
  return found(at, third?.to ?? month.to + 1, part, 'signs', { trust: year ? 1 : 0.8 });
}
