import { overParticles, weekdayAt } from './dates/lexicon.ts';
import type { Token } from './tokens.ts';

/** Whether nothing but a colon, a weekday or articles stands between two tokens. */
export function isBeside(tokens: readonly Token[], from: number, to: number): boolean {
  let at = from;
  if (/^[:=]$/u.test(tokens[at]?.norm ?? '')) at += 1;
  const weekday = weekdayAt(tokens, at);
  at = weekday && weekday.to <= to ? weekday.to : at;
  return at >= to || overParticles(tokens, at, 2) >= to;
}

const WIDEST = 7;

/** Whether a cue that counts only beside a date stands beside one. */
export function besideDate(
  tokens: readonly Token[],
  isDate: (at: number) => boolean,
  cue: { readonly from: number; readonly to: number },
): boolean {
  for (let at = cue.to; at < Math.min(tokens.length, cue.to + WIDEST); at += 1) {
    if (!isDate(at)) continue;
    if (isBeside(tokens, cue.to, at)) return true;
    break;
  }
  for (let at = cue.from - 1; at >= Math.max(0, cue.from - WIDEST); at -= 1) {
    if (isDate(at)) return isBeside(tokens, at + 1, cue.from);
  }
  return false;
}
