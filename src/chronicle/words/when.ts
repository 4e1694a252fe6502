import type { Release } from '../account/types.ts';
import { tellDay, tellEdtf, tellRun } from './days.ts';
import { tellP } from './numbers.ts';
import type { Phrases } from './types.ts';

/** The day of release in a few words, or its window. */
export function whenShort({ state, best, interval95, edtf }: Release, phrases: Phrases): string {
  if (state === 'open' || best === null) return phrases.vague.anyDay;
  if (state === 'day') return tellDay(phrases, best);
  return interval95 === null ? tellEdtf(phrases, edtf) : tellRun(phrases, ...interval95);
}

/** The probability that stands beside it; empty where nothing bounds the day. */
export function pShort({ state, pBest, pInterval }: Release, phrases: Phrases): string {
  return state === 'open' ? '' : tellP(phrases, state === 'day' ? pBest : pInterval);
}
