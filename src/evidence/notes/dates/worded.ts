import type { Token } from '../tokens.ts';
import { type Found, found } from './found.ts';
import { type MonthFound, monthAt, overParticles } from './lexicon.ts';
import { isDay, type Part } from './part.ts';
import { yearAt } from './years.ts';

const SUFFIXES = new Set('st nd rd th er re e eme de ste te ste o a go ga . º ª ° os'.split(' '));

/** A day of the month at token `at`, with its ordinal ending: `4`, `4th`, `1er`, `4.`. */
export function dayAt(
  tokens: readonly Token[],
  at: number,
): { day: number; to: number } | undefined {
  const token = tokens[at];
  if (token?.kind !== 'num' || token.norm.length > 2) return undefined;
  const day = Number(token.norm);
  if (day < 1 || day > 31) return undefined;
  let to = at + 1;
  const colon = tokens[to];
  if (colon?.text === ':' && colon.end === colon.start + 1 && !colon.gap) {
    if (colon.norm === ':' && SUFFIXES.has(tokens[to + 1]?.norm ?? '')) to += 2;
    return { day, to };
  }
  const next = tokens[to];
  if (next && !next.gap && SUFFIXES.has(next.norm)) to += 1;
  return { day, to };
}

/** Steps over one separator between the parts of a worded date. */
function overSeparator(tokens: readonly Token[], at: number): number {
  const token = tokens[at];
  const glued = token !== undefined && !token.gap && /^[-/.]$/u.test(token.norm);
  return glued && tokens[at + 1]?.gap === false ? at + 1 : overParticles(tokens, at);
}

/** A weak month name counts where its neighbours or the language of the line speak for it. */
function believed(month: MonthFound, backed: boolean, spoken: ReadonlySet<string>): boolean {
  return !month.weak || backed || month.languages.some((l) => l !== 'en' && spoken.has(l));
}

function withYear(
  tokens: readonly Token[],
  from: number,
  at: number,
  part: Part,
  languages: readonly string[],
): Found | undefined {
  const behind = overSeparator(tokens, at);
  const dash = tokens[at]?.norm === '-' && tokens[at - 2]?.norm !== '-' && behind > at;
  const year = yearAt(tokens, behind, dash ? 'never' : 'any');
  const next = tokens[year?.to ?? 0];
  const clock = next !== undefined && !next.gap && next.text === ':';
  if (year && !clock && isDay(part.day ?? 1, part.month ?? 1, year.year)) {
    const whole = { ...part, year: year.year };
    return found(from, year.to, whole, 'worded', { languages, trust: year.sure ? 1 : 0.9 });
  }
  if (!isDay(part.day ?? 1, part.month ?? 1)) return undefined;
  return found(from, at, part, 'worded', { languages, trust: 0.9 });
}

/** `4 March 1996`, `4th of March '96`, `le 1er mars`, `4. maaliskuuta 1996`, `4-Mar-96`. */
export function dayFirst(
  tokens: readonly Token[],
  at: number,
  spoken: ReadonlySet<string>,
): Found | undefined {
  const day = dayAt(tokens, at);
  if (!day) return undefined;
  const month = monthAt(tokens, overSeparator(tokens, day.to));
  const strong = month !== undefined && tokens[month.to] !== undefined;
  if (!month || !believed(month, strong, spoken)) return undefined;
  const part = { day: day.day, month: month.month };
  const result = withYear(tokens, at, month.to, part, month.languages);
  if (month.weak && result?.parts[0]?.year === undefined) {
    return believed(month, false, spoken) ? result : undefined;
  }
  return result;
}

/** `March 4, 1996`, `Mar. 4th`. */
export function monthFirst(
  tokens: readonly Token[],
  at: number,
  spoken: ReadonlySet<string>,
): Found | undefined {
  const month = monthAt(tokens, at);
  if (!month || !believed(month, tokens[at]?.norm === 'may', spoken)) return undefined;
  const here = tokens[month.to];
  const glued = here?.norm === '-' && !here.gap ? month.to + 1 : month.to;
  const the = tokens[glued]?.norm === 'the' ? glued + 1 : glued;
  const day = dayAt(tokens, the);
  if (!day) return undefined;
  const after = tokens[day.to];
  if (after && !after.gap && /^[:%]$/u.test(after.norm)) return undefined;
  return withYear(tokens, at, day.to, { day: day.day, month: month.month }, month.languages);
}

/** `March 1996`, `oct 93`, `marzo de 1996`, `Mar/96`. */
export function monthYear(
  tokens: readonly Token[],
  at: number,
  spoken: ReadonlySet<string>,
): Found | undefined {
  const month = monthAt(tokens, at);
  if (!month) return undefined;
  const behind = overSeparator(tokens, month.to);
  const year = yearAt(tokens, behind, 'large');
  if (!year) return undefined;
  const between = tokens[behind - 1];
  const particle = behind > month.to && between?.norm !== ',' && between?.text !== '.';
  const backed = particle || tokens[at]?.norm === 'may';
  if (!believed(month, backed, spoken)) return undefined;
  const after = tokens[year.to];
  if (
    !year.sure &&
    after &&
    !after.gap &&
    /^[:.%]$/u.test(after.norm) &&
    tokens[year.to + 1]?.kind === 'num'
  ) {
    return undefined;
  }
  const part = { month: month.month, year: year.year };
  const trust = year.sure ? 1 : 0.75;
  return found(at, year.to, part, 'worded', { languages: month.languages, trust });
}

/** `1996 March 4`, `1996. március 4.`, `1996-Mar`. */
export function yearFirst(
  tokens: readonly Token[],
  at: number,
  spoken: ReadonlySet<string>,
): Found | undefined {
  const year = yearAt(tokens, at);
  if (!year) return undefined;
  const dot = tokens[year.to];
  const start = dot?.text === '.' && !dot.gap ? year.to + 1 : overSeparator(tokens, year.to);
  const month = monthAt(tokens, start);
  if (!month || !believed(month, start > year.to, spoken)) return undefined;
  const day = dayAt(tokens, overSeparator(tokens, month.to));
  const whole = { year: year.year, month: month.month };
  const extra = { languages: month.languages };
  if (day && isDay(day.day, month.month, year.year) && !yearAt(tokens, month.to)) {
    return found(at, day.to, { ...whole, day: day.day }, 'worded', extra);
  }
  if (yearAt(tokens, overSeparator(tokens, month.to))) return undefined;
  return found(at, month.to, whole, 'worded', { ...extra, trust: 0.9 });
}

/** `March` alone; its year has to come from elsewhere. */
export function monthAlone(
  tokens: readonly Token[],
  at: number,
  spoken: ReadonlySet<string>,
): Found | undefined {
  const month = monthAt(tokens, at);
  const before = tokens[at - 1];
  const capital = /^(?:May|MAY)$/u.test(tokens[at]?.text ?? '');
  const led =
    before === undefined ||
    before.kind === 'sym' ||
    /^(?:in|for|by|of|since|until|late|early|mid)$/u.test(before.norm);
  if (!month || !believed(month, capital && led, spoken)) return undefined;
  const extra = { languages: month.languages, trust: 0.8 };
  return found(at, month.to, { month: month.month }, 'worded', extra);
}
