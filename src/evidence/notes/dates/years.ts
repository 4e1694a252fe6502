import type { Token } from '../tokens.ts';
import { fullYear } from './part.ts';

/** A year where it stands. */
export interface YearFound {
  readonly year: number;
  readonly to: number;
  /** Written with all its digits, or with an apostrophe. */
  readonly sure: boolean;
}

/** A year of four digits, 1850 to 2099. */
export function isYear(token: Token | undefined): boolean {
  if (token?.kind !== 'num' || token.norm.length !== 4) return false;
  const year = Number(token.norm);
  return year >= 1850 && year <= 2099;
}

/**
 * The year at token `at`: `1996`, `'96`, and where `two` allows it `96`; two digits below 32 count
 * only with an apostrophe or a leading zero, as they may be a day.
 */
export function yearAt(
  tokens: readonly Token[],
  at: number,
  two: 'never' | 'large' | 'any' = 'never',
): YearFound | undefined {
  const token = tokens[at];
  if (token === undefined) return undefined;
  if (isYear(token)) return { year: Number(token.norm), to: at + 1, sure: true };
  const next = tokens[at + 1];
  if (token.norm === "'" && next?.kind === 'num' && !next.gap && next.norm.length === 2) {
    return { year: fullYear(Number(next.norm)), to: at + 2, sure: true };
  }
  if (two === 'never' || token.kind !== 'num' || token.norm.length !== 2) return undefined;
  const value = Number(token.norm);
  if (two === 'large' && value <= 31 && !token.norm.startsWith('0')) return undefined;
  return { year: fullYear(value), to: at + 1, sure: value > 31 };
}
