import { phraseAt, phraseBook } from '../phrases.ts';
import type { Token } from '../tokens.ts';
import { COUNTED, FOR, MONEY, NUMBER_OF, TELEPHONE, TRADED } from '../words/not-dates.ts';
import { isDay } from './part.ts';
import { isYear } from './years.ts';

const money = phraseBook([[true, MONEY]] as const);
const numberOf = phraseBook([[true, NUMBER_OF]] as const);
const counted = phraseBook([[true, COUNTED]] as const);
const traded = phraseBook([[true, TRADED]] as const);
const forMoney = phraseBook([[true, FOR]] as const);
const telephone = phraseBook([[true, TELEPHONE]] as const);

/** The end of digits that are glued by `. , / - : x`: `12,90`, `14/102`, `10:30`, `63x88`. */
function groupEnd(tokens: readonly Token[], at: number): number {
  let to = at + 1;
  while (
    tokens[to + 1]?.kind === 'num' &&
    !tokens[to]!.gap &&
    !tokens[to + 1]!.gap &&
    /^[-.,/:x×']$/u.test(tokens[to]!.norm)
  ) {
    to += 2;
  }
  return to;
}

/** Whether a group of glued digits looks like a whole date, which no marker can make a number of. */
function isWholeDate(tokens: readonly Token[], at: number, to: number): boolean {
  if (to - at !== 5) return false;
  const [a, b, c] = [at, at + 2, at + 4].map((index) => Number(tokens[index]!.norm));
  if (isYear(tokens[at])) return isDay(c!, b!);
  const years = tokens[at + 4]!.norm.length;
  return (years === 2 || isYear(tokens[at + 4])) && (isDay(a!, b!) || isDay(b!, a!));
}

function isClock(tokens: readonly Token[], at: number): boolean {
  const [colon, minutes] = [tokens[at + 1], tokens[at + 2]];
  return (
    colon?.norm === ':' &&
    !colon.gap &&
    minutes?.kind === 'num' &&
    !minutes.gap &&
    minutes.norm.length === 2 &&
    Number(tokens[at]!.norm) < 25
  );
}

/** Digits that are followed by something that is counted or paid; a year may not be a number of days. */
function countedAt(tokens: readonly Token[], to: number, year: boolean): boolean {
  const after = tokens[to];
  if (phraseAt(money, tokens, to))
    return !(year && after?.kind === 'word' && after.norm === 'mark');
  const match = phraseAt(counted, tokens, to);
  if (!match) return false;
  if (after!.text === '"' && year) return false;
  if (after!.kind !== 'word') return !after!.gap || after!.norm === '×';
  return after!.norm !== 'x' || !after!.gap || !year;
}

function telephoneEnd(tokens: readonly Token[], at: number): number {
  let to = at;
  let digits = 0;
  while (tokens[to] && (tokens[to]!.kind === 'num' || /^[-+().:/]$/u.test(tokens[to]!.norm))) {
    if (tokens[to]!.kind === 'num') digits += tokens[to]!.norm.length;
    to += 1;
  }
  return digits >= 5 ? to : at;
}

/** Marks the tokens that are prices, times, counts, numbers, sizes, telephone numbers or links. */
export function notDates(tokens: readonly Token[]): Uint8Array {
  const masked = new Uint8Array(tokens.length);
  const mask = (from: number, to: number) => masked.fill(1, from, to);
  let at = 0;
  while (at < tokens.length) {
    const token = tokens[at]!;
    if (token.kind === 'link') mask(at, at + 1);
    const phone = phraseAt(telephone, tokens, at);
    const plus = token.norm === '+' && tokens[at + 1]?.kind === 'num' ? at : undefined;
    const dialled = phone?.to ?? plus;
    if (dialled !== undefined) {
      const to = telephoneEnd(tokens, dialled);
      mask(dialled, to);
      if (to > dialled) {
        at = to;
        continue;
      }
    }
    at = token.kind === 'num' ? numberSpan(tokens, at, mask) : at + 1;
  }
  return masked;
}

/** Markers after which a number that looks like a year is one. */
const LOOSE =
  /^(?:issue|vol|volume|part|sheet|photo|img|box|room|order|invoice|heft|karte|carte|carta|kort|kortti|card|number|numero|nummer|numer|page|pagina|side|s|order|parcel|tome|shelf|row)$/u;

function numberSpan(
  tokens: readonly Token[],
  at: number,
  mask: (from: number, to: number) => void,
): number {
  const to = groupEnd(tokens, at);
  if (isClock(tokens, at)) {
    mask(at, at + 3);
    return Math.max(to, at + 3);
  }
  if (isWholeDate(tokens, at, to)) return to;
  const year = isYear(tokens[at]) && to === at + 1;
  const paid =
    endsBefore(money, tokens, at) && !(year && tokens[at]!.gap && tokens[at - 1]!.kind === 'word');
  const named = endsBefore(numberOf, tokens, at) && !(year && LOOSE.test(tokens[at - 1]!.norm));
  const price = to === at + 3 && isPrice(tokens, at);
  if (paid || price || named || countedAt(tokens, to, year)) mask(at, to);
  else if (/^(?:x|×)$/u.test(tokens[at + 1]?.norm ?? '') && to > at + 1) mask(at, to);
  return to;
}

/** How many words may stand between a word of trade and the price. */
const REACH_OF_TRADE = 8;

/** `bought two for 4.50`: two decimals that a small word joins to a word of trade in the clause. */
function isPrice(tokens: readonly Token[], at: number): boolean {
  const decimals = /^[.,]$/u.test(tokens[at + 1]!.norm) && tokens[at + 2]!.norm.length === 2;
  if (!decimals || !endsBefore(forMoney, tokens, at)) return false;
  for (let from = at - 2; from >= Math.max(0, at - REACH_OF_TRADE); from -= 1) {
    if (/^[.;:]$/u.test(tokens[from]!.norm)) return false;
    if (phraseAt(traded, tokens, from)) return true;
  }
  return false;
}

/** Whether a phrase of the book ends right before the token. */
function endsBefore(
  book: Parameters<typeof phraseAt>[0],
  tokens: readonly Token[],
  at: number,
): boolean {
  for (let from = at - 1; from >= Math.max(0, at - 3); from -= 1) {
    if (phraseAt(book, tokens, from)?.to === at) return true;
  }
  return false;
}
