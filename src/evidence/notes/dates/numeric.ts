import type { Token } from '../tokens.ts';
import { type Found, found } from './found.ts';
import { fullYear, isDay, type Part } from './part.ts';
import { isYear, yearAt } from './years.ts';

const STYLES = { '/': 'slash', '.': 'dot', '-': 'hyphen' } as const;
type Separator = keyof typeof STYLES;

function separatorAt(tokens: readonly Token[], at: number): Separator | undefined {
  const token = tokens[at];
  return token && !token.gap && token.norm in STYLES ? (token.norm as Separator) : undefined;
}

/** A number behind a separator; only after a full stop may white space stand between them. */
function numberAt(tokens: readonly Token[], at: number, separator: Separator): Token | undefined {
  const token = tokens[at];
  if (token?.kind !== 'num' || (token.gap && separator !== '.')) return undefined;
  return token;
}

/** Whether digits or signs that belong to a longer number or code touch the phrase. */
function touches(tokens: readonly Token[], from: number, to: number): boolean {
  const before = tokens[from - 1];
  const first = tokens[from]!;
  if (before && !first.gap) {
    if (before.kind === 'word' || before.kind === 'num') return true;
    const farther = tokens[from - 2];
    if (/^[-./,:]$/u.test(before.norm) && !before.gap && farther?.kind === 'num') return true;
    if (/^[-/]$/u.test(before.norm) && !before.gap && farther?.kind === 'word') return true;
  }
  const after = tokens[to];
  if (!after || after.gap) return false;
  if (after.kind === 'num') return true;
  const beyond = tokens[to + 1];
  const joined = beyond !== undefined && !beyond.gap && beyond.kind === 'num';
  return joined && /^[-./:]$/u.test(after.norm);
}

function single(at: number, to: number, part: Part, style: Found['style'], trust = 1): Found[] {
  return [found(at, to, part, style, { trust })];
}

/** Readings of `a b year` with day and month in either order. */
function eitherOrder(a: number, b: number, year: number): Part[] {
  const parts: Part[] = [];
  if (isDay(a, b, year)) parts.push({ day: a, month: b, year });
  if (a !== b && isDay(b, a, year)) parts.push({ day: b, month: a, year });
  return parts;
}

/** `1996-03-04`, `96/3/4`, `3/4/96`, `24.9.1993`, `4. 3. 1996`. */
export function threeNumbers(tokens: readonly Token[], at: number): Found | undefined {
  const a = tokens[at];
  const separator = separatorAt(tokens, at + 1);
  if (a?.kind !== 'num' || a.norm.length > 4 || !separator) return undefined;
  const b = numberAt(tokens, at + 2, separator);
  if (!b || b.norm.length > 2 || separatorAt(tokens, at + 3) !== separator) return undefined;
  const [first, second] = [Number(a.norm), Number(b.norm)];
  const c = numberAt(tokens, at + 4, separator);
  const short = yearAt(tokens, at + 4, 'any');
  if (touches(tokens, at, c ? at + 5 : (short?.to ?? at + 4))) return undefined;
  if (isYear(a) && c && c.norm.length <= 2) {
    const day = Number(c.norm);
    const part = { year: first, month: second, day };
    return isDay(day, second, first) ? single(at, at + 5, part, 'iso')[0] : undefined;
  }
  if (a.norm.length > 2 || !short) return undefined;
  const parts = eitherOrder(first, second, short.year);
  if (parts.length === 0 && first > 31 && c && c.norm.length <= 2) {
    const year = fullYear(first);
    const part = { year, month: second, day: Number(c.norm) };
    return isDay(Number(c.norm), second, year)
      ? single(at, at + 5, part, 'iso', 0.9)[0]
      : undefined;
  }
  if (parts.length === 0) return undefined;
  const style = STYLES[separator];
  const twoWay = parts.length > 1;
  return { from: at, to: short.to, parts, style, languages: [], twoWay, trust: 1 };
}

/** `1996-03`, `1995/96`, `1995–1997`. */
export function yearAndMore(tokens: readonly Token[], at: number): Found | undefined {
  const separator = separatorAt(tokens, at + 1);
  if (!isYear(tokens[at]) || !separator) return undefined;
  const b = numberAt(tokens, at + 2, separator);
  if (!b || b.gap || b.norm.length > 2 || touches(tokens, at, at + 3)) return undefined;
  const year = Number(tokens[at]!.norm);
  const month = Number(b.norm);
  if (month < 1 || month > 12 || (separator === '.' && b.norm.length < 2)) return undefined;
  return found(at, at + 3, { year, month }, 'iso', { trust: separator === '-' ? 1 : 0.85 });
}

/** `6/95`, `06.1995`, `06-1995`: month and year. */
export function monthAndYear(tokens: readonly Token[], at: number): Found | undefined {
  const a = tokens[at];
  const separator = separatorAt(tokens, at + 1);
  if (a?.kind !== 'num' || a.norm.length > 2 || !separator) return undefined;
  const month = Number(a.norm);
  if (month < 1 || month > 12 || tokens[at + 2]?.gap) return undefined;
  const year = yearAt(tokens, at + 2, 'any');
  if (!year || touches(tokens, at, year.to)) return undefined;
  if (!year.sure) return undefined;
  const full = isYear(tokens[year.to - 1]) || tokens[at + 2]?.norm === "'";
  const padded = a.norm.length === 2 && a.norm.startsWith('0');
  if (!full && separator !== '/' && !padded) {
    return found(at, year.to, { month, year: year.year }, 'short', { trust: 0.4 });
  }
  return found(at, year.to, { month, year: year.year }, 'iso', { trust: full ? 1 : 0.9 });
}

/** `24.9.` and `24/9`: day and month whose year has to come from elsewhere. */
export function dayAndMonth(tokens: readonly Token[], at: number): Found | undefined {
  const a = tokens[at];
  const separator = separatorAt(tokens, at + 1);
  if (a?.kind !== 'num' || a.norm.length > 2 || !separator || separator === '-') return undefined;
  const b = numberAt(tokens, at + 2, separator);
  if (!b || b.norm.length > 2) return undefined;
  const stopped = separator === '.' && separatorAt(tokens, at + 3) === '.';
  const to = stopped ? at + 4 : at + 3;
  if (touches(tokens, at, at + 3)) return undefined;
  const parts = eitherOrder(Number(a.norm), Number(b.norm), 2000).map(
    ({ day, month }) => ({ day, month }) as Part,
  );
  if (parts.length === 0) return undefined;
  const style = STYLES[separator];
  const twoWay = parts.length > 1;
  return { from: at, to, parts, style, languages: [], twoWay, trust: stopped ? 0.8 : 0.5 };
}

/** `19960304`. */
export function eightDigits(tokens: readonly Token[], at: number): Found | undefined {
  const token = tokens[at];
  if (token?.kind !== 'num' || token.norm.length !== 8 || touches(tokens, at, at + 1)) {
    return undefined;
  }
  const [year, month, day] = [token.norm.slice(0, 4), token.norm.slice(4, 6), token.norm.slice(6)];
  const part = { year: Number(year), month: Number(month), day: Number(day) };
  const likely = part.year >= 1900 && part.year < 2100 && isDay(part.day, part.month, part.year);
  return likely ? found(at, at + 1, part, 'iso', { trust: 0.7 }) : undefined;
}

const UNKNOWN = /^(?:x{1,2}|\?|_)$/u;

/** `xx/03/1996`, `??.3.96`, `1996-03-XX`, `199X`: what is not known is written as such. */
export function withUnknowns(tokens: readonly Token[], at: number): Found | undefined {
  const from = at;
  let here = at;
  while (UNKNOWN.test(tokens[here]?.norm ?? '') && here < at + 2) here += 1;
  if (here > at && separatorAt(tokens, here)) {
    const rest =
      monthAndYear(tokens, here + 1) ?? monthAndYear(tokens.slice(here + 1, here + 5), 0);
    if (!rest) return undefined;
    const offset = rest.from === 0 ? here + 1 : 0;
    return found(from, rest.to + offset, rest.parts[0]!, 'iso', { trust: 0.9 });
  }
  const token = tokens[at];
  const next = tokens[at + 1];
  if (token?.kind === 'num' && token.norm.length === 3 && next?.norm === 'x' && !next.gap) {
    const decade = Number(token.norm) * 10;
    if (decade >= 1850 && decade < 2100) return found(at, at + 2, { decade }, 'iso');
  }
  const whole = yearAndMoreOpen(tokens, at);
  return whole;
}

function yearAndMoreOpen(tokens: readonly Token[], at: number): Found | undefined {
  if (!isYear(tokens[at]) || separatorAt(tokens, at + 1) !== '-') return undefined;
  const year = Number(tokens[at]!.norm);
  const b = tokens[at + 2];
  if (UNKNOWN.test(b?.norm ?? '') && !b?.gap) {
    const sub = separatorAt(tokens, at + 3) === '-' && UNKNOWN.test(tokens[at + 4]?.norm ?? '');
    return found(at, sub ? at + 5 : at + 3, { year }, 'iso');
  }
  const month = Number(b?.norm);
  const open = separatorAt(tokens, at + 3) === '-' && UNKNOWN.test(tokens[at + 4]?.norm ?? '');
  if (b?.kind !== 'num' || !open || month < 1 || month > 12) return undefined;
  const double = UNKNOWN.test(tokens[at + 5]?.norm ?? '') && !tokens[at + 5]?.gap;
  return found(at, double ? at + 6 : at + 5, { year, month }, 'iso');
}
