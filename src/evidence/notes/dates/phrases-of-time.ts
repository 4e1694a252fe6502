import { opens, phraseAt, phraseBook } from '../phrases.ts';
import type { Token } from '../tokens.ts';
import { ABOUT, ABOUT_BEHIND, BETWEEN, FROM_ON, OR_WORDS, TO_WORDS } from '../words/qualifiers.ts';
import { bareYear, decade, quarter, season, third } from './coarse.ts';
import type { Found } from './found.ts';
import { namesTime, overParticles, weekdayAt } from './lexicon.ts';
import {
  dayAndMonth,
  eightDigits,
  monthAndYear,
  threeNumbers,
  withUnknowns,
  yearAndMore,
} from './numeric.ts';
import { beginOf, isDay, type Part } from './part.ts';
import { eastAsian, eraLetter } from './signs.ts';
import { dayAt, dayFirst, monthAlone, monthFirst, monthYear, yearFirst } from './worded.ts';
import { yearAt } from './years.ts';

/** A date, an interval or a choice of dates, where it stands. */
export interface TimePhrase extends Found {
  /** The last part of an interval in which the day lies. */
  readonly last?: Part;
  /** Other parts of which one holds. */
  readonly or?: Part;
  readonly about: boolean;
  readonly unsure: boolean;
  /** A word such as `from` or `between` opens it. */
  readonly opened?: 'from' | 'between';
  /** Monday is 1; as the note names it. */
  readonly weekday?: number;
}

const about = phraseBook([[true, ABOUT]] as const);
const aboutBehind = phraseBook([[true, ABOUT_BEHIND]] as const);
const openers = phraseBook([
  ['between', BETWEEN],
  ['from', FROM_ON],
] as const);
const joiners = phraseBook([
  ['to', TO_WORDS],
  ['or', OR_WORDS],
] as const);

type Spoken = ReadonlySet<string>;

const WITH_LANGUAGE = [dayFirst, monthFirst, yearFirst, monthYear, monthAlone];
const WITHOUT = [
  eastAsian,
  eraLetter,
  threeNumbers,
  withUnknowns,
  yearAndMore,
  monthAndYear,
  dayAndMonth,
  eightDigits,
  quarter,
  season,
  decade,
  bareYear,
];

function longer(best: Found | undefined, option: Found | undefined): Found | undefined {
  return option && (!best || option.to > best.to) ? option : best;
}

/** The longest single date at a token. */
function singleAt(tokens: readonly Token[], at: number, spoken: Spoken): Found | undefined {
  const kind = tokens[at]?.kind;
  if (kind === undefined || kind === 'link') return undefined;
  let best: Found | undefined;
  for (const grammar of WITHOUT) best = longer(best, grammar(tokens, at));
  for (const grammar of WITH_LANGUAGE) best = longer(best, grammar(tokens, at, spoken));
  if (kind === 'num' || kind === 'sym') return best;
  return longer(
    best,
    third(tokens, at, (inner) => singleAt(tokens, inner, spoken)),
  );
}

/** `24–27 Sep 1993`, `3 or 4 March 1996`: a day whose month and year stand with the next one. */
function sharedMonth(tokens: readonly Token[], at: number, spoken: Spoken): TimePhrase | undefined {
  const day = dayAt(tokens, at);
  if (!day) return undefined;
  const joiner = phraseAt(joiners, tokens, day.to);
  if (!joiner) return undefined;
  const loose = tokens[day.to]!.kind === 'sym' && tokens[day.to]!.gap;
  const next = overParticles(tokens, joiner.to, 1);
  const right = singleAt(tokens, next, spoken);
  const part = right?.parts.find((p) => p.day !== undefined && p.day > day.day);
  if (!right || !part || right.style === 'iso' || right.style === 'bare') return undefined;
  if (loose && at === 0) return undefined;
  if (right.style === 'slash' && tokens[day.to]!.text === '/') return undefined;
  const first: Part = { ...part, day: day.day };
  if (!isDay(day.day, part.month ?? 0, part.year)) return undefined;
  const joined = { ...right, from: at, twoWay: false, about: false, unsure: false };
  const either = joiner.value === 'or' || tokens[day.to]!.text === '/';
  return either
    ? { ...joined, parts: [first], or: part }
    : { ...joined, parts: [first], last: part };
}

/** `Sept. 20–24, 1993`: two days behind their month. */
function daysOfMonth(tokens: readonly Token[], at: number, spoken: Spoken): TimePhrase | undefined {
  const left = monthFirst(tokens, at, spoken);
  const part = left?.parts[0];
  const dash = tokens[left?.to ?? 0];
  if (!left || !part || part.year !== undefined || dash?.norm !== '-' || dash.gap) return undefined;
  const second = dayAt(tokens, left.to + 1);
  if (!second || second.day <= (part.day ?? 0)) return undefined;
  const year = yearAt(tokens, overParticles(tokens, second.to), 'any');
  const given = year ? { year: year.year } : {};
  const [first, last] = [
    { ...part, ...given },
    { ...part, day: second.day, ...given },
  ];
  if (!isDay(second.day, part.month ?? 0, year?.year)) return undefined;
  return { ...left, to: year?.to ?? second.to, parts: [first], last, about: false, unsure: false };
}

/** `1995/96`, `1995–97`, `1995-1997`. */
function yearSpan(tokens: readonly Token[], at: number): TimePhrase | undefined {
  const first = yearAt(tokens, at);
  const sep = tokens[first?.to ?? 0];
  if (!first?.sure || !sep || !/^[-/]$/u.test(sep.norm)) return undefined;
  const second = yearAt(tokens, first.to + 1, 'any');
  const after = tokens[second?.to ?? 0];
  if (!second || second.year <= first.year || second.year - first.year > 30) return undefined;
  if (tokens[second.to - 1]!.norm.length === 2 && sep.gap) return undefined;
  if (
    after &&
    !after.gap &&
    /^[-/.]$/u.test(after.norm) &&
    tokens[second.to + 1]?.kind === 'num' &&
    !tokens[second.to + 1]!.gap
  )
    return undefined;
  const short = tokens[second.to - 1]!.norm.length === 2 && !second.sure;
  if (short && second.year !== first.year + 1) return undefined;
  if (short && Number(tokens[second.to - 1]!.norm) <= 12 && sep.norm === '-') return undefined;
  return {
    from: at,
    to: second.to,
    parts: [{ year: first.year }],
    last: { year: second.year },
    style: 'bare',
    languages: [],
    twoWay: false,
    trust: 0.9,
    about: false,
    unsure: false,
  };
}

/** Right after another one, a second date that `to`, `and`, `or` or a dash makes its partner. */
function partner(
  tokens: readonly Token[],
  left: Found,
  opened: boolean,
  spoken: Spoken,
): TimePhrase | undefined {
  const joiner = phraseAt(joiners, tokens, left.to);
  if (!joiner) return undefined;
  const word = tokens[left.to]!;
  const light =
    joiner.value === 'to' && /^(?:a|e|i|y|and|et|und|och|og|ja|en|au|al)$/u.test(word.norm);
  if (light && !opened) return undefined;
  const right = singleAt(tokens, overParticles(tokens, joiner.to, 1), spoken);
  const [first, last] = [left.parts[0]!, right?.parts[0]];
  if (!right || !last || left.parts.length > 1 || right.parts.length > 1) return undefined;
  if (left.style === 'bare' && right.style !== 'bare') return undefined;
  if (right.style === 'bare' && left.style !== 'bare') return undefined;
  const start: Part =
    first.year === undefined && last.year !== undefined ? { ...first, year: last.year } : first;
  if (word.norm === '/' && word.gap) return undefined;
  if (beginOf(start) >= beginOf(last) && first.year !== undefined) return undefined;
  const backwards = beginOf(start) >= beginOf(last) && last.year !== undefined;
  const begun = backwards ? { ...start, year: last.year! - 1 } : start;
  const languages = [...left.languages, ...right.languages];
  const base = {
    ...right,
    from: left.from,
    parts: [begun],
    languages,
    about: false,
    unsure: false,
    trust: Math.min(left.trust, right.trust) * 0.95 + (first.year === undefined ? 0.05 : 0),
  };
  const slash = word.text === '/' && first.code === undefined;
  return joiner.value === 'or' || slash ? { ...base, or: last } : { ...base, last };
}

/** The widest date, interval or choice at a token. */
function phraseOfTimeAt(
  tokens: readonly Token[],
  at: number,
  spoken: Spoken,
): TimePhrase | undefined {
  const token = tokens[at]!;
  if (token.kind === 'sym' && !/^['?x_]$/u.test(token.norm)) return undefined;
  if (token.kind === 'word' && !opens(openers, token) && !namesTime(token)) return undefined;
  const opener = phraseAt(openers, tokens, at);
  const start = opener ? overParticles(tokens, opener.to, 1) : at;
  const left = singleAt(tokens, start, spoken);
  const shared =
    sharedMonth(tokens, start, spoken) ??
    daysOfMonth(tokens, start, spoken) ??
    yearSpan(tokens, start);
  const joined = left && partner(tokens, left, opener !== undefined, spoken);
  const wide = longer(shared, joined) as TimePhrase | undefined;
  if (wide && (!left || wide.to > left.to)) {
    return { ...wide, from: at, ...(opener && { opened: opener.value }) };
  }
  if (opener || !left) return undefined;
  return { ...left, about: false, unsure: false };
}

function withSurroundings(tokens: readonly Token[], phrase: TimePhrase, free: number): TimePhrase {
  let { from, to } = phrase;
  let isAbout = phrase.about;
  let weekday: number | undefined;
  for (let step = Math.min(4, from - free); step >= 1; step -= 1) {
    const match = phraseAt(about, tokens, from - step);
    const reached = match && overParticles(tokens, match.to, 1);
    if (match && (match.to === from || reached === from)) {
      isAbout = true;
      from = match.from;
      break;
    }
  }
  for (let step = 1; step <= Math.min(3, from - free); step += 1) {
    const match = weekdayAt(tokens, from - step);
    if (match && (match.to === from || overParticles(tokens, match.to, 1) === from)) {
      weekday = match.weekday;
      from -= step;
      break;
    }
  }
  const bracket = tokens[to]?.text === '(' ? to + 1 : to;
  const later = weekday === undefined ? weekdayAt(tokens, bracket) : undefined;
  const closing = bracket > to ? tokens[later?.to ?? 0]?.text === ')' : true;
  if (later && closing && phrase.parts[0]?.day !== undefined) {
    weekday = later.weekday;
    to = bracket > to ? later.to + 1 : later.to;
  }
  const behind = phraseAt(aboutBehind, tokens, to);
  if (behind) {
    isAbout = true;
    to = behind.to;
  }
  return { ...phrase, from, to, about: isAbout, ...(weekday !== undefined && { weekday }) };
}

/** Every date phrase of the text, in order and without overlap. */
export function phrasesOfTime(
  tokens: readonly Token[],
  masked: Uint8Array,
  spoken: Spoken,
): TimePhrase[] {
  const phrases: TimePhrase[] = [];
  let at = 0;
  let free = 0;
  while (at < tokens.length) {
    const phrase = masked[at] ? undefined : phraseOfTimeAt(tokens, at, spoken);
    if (!phrase || masked[phrase.to - 1]) {
      at += 1;
      continue;
    }
    const whole = withSurroundings(tokens, phrase, free);
    phrases.push(whole);
    at = whole.to;
    free = at;
  }
  return phrases;
}
