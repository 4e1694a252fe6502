import { besideDate } from './adjacency.ts';
import { type Boundary, boundaryAt } from './boundaries.ts';
import { type Cue, cuesIn } from './cues.ts';
import { hasWeakMonth } from './dates/lexicon.ts';
import { notDates } from './dates/not-dates.ts';
import { phrasesOfTime, type TimePhrase } from './dates/phrases-of-time.ts';
import { phraseAt, phraseBook } from './phrases.ts';
import { type PrintingSpan, printingSpans } from './printing.ts';
import { type Token, tokensOf } from './tokens.ts';
import { UNSURE } from './words/qualifiers.ts';
import { SOURCE_NOUNS } from './words/source-words.ts';

/** What a token was understood as. */
export type Role = 'date' | 'cue' | 'printing' | 'free' | 'number';

/** A stretch of notes that is read in one go, with everything found in it. */
export interface Passage {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly times: readonly TimePhrase[];
  readonly cues: readonly Cue[];
  readonly printing: readonly PrintingSpan[];
  readonly roles: readonly Role[];
  readonly boundaries: readonly Boundary[];
}

const NO_LANGUAGE: ReadonlySet<string> = new Set();
const unsure = phraseBook([[true, UNSURE]] as const);
const sourceNouns = phraseBook([[true, SOURCE_NOUNS]] as const);

/** Languages, English aside, whose cue words the text uses. */
function spokenIn(tokens: readonly Token[], language: string | undefined): Set<string> {
  const spoken = new Set<string>();
  for (const cue of cuesIn(tokens, () => false)) {
    if (cue.languages.includes('en')) continue;
    for (const name of cue.languages) spoken.add(name);
  }
  if (language && !language.startsWith('en')) spoken.add(language.slice(0, 2));
  return spoken;
}

/** Words of doubt right behind a date: `1996?`, `1996 (?)`, `March 1996, probably`. */
function doubtBehind(tokens: readonly Token[], time: TimePhrase): TimePhrase {
  const sign = tokens[time.to];
  const open = sign && /^[(,[]$/u.test(sign.text) ? time.to + 1 : time.to;
  const match = phraseAt(unsure, tokens, open);
  if (!match) return time;
  const closing = tokens[match.to];
  if (open > time.to && sign?.text !== ',') {
    return closing && /^[)\]]$/u.test(closing.text)
      ? { ...time, to: match.to + 1, unsure: true }
      : time;
  }
  const last = closing === undefined || /^[.,;)\]]$/u.test(closing.text);
  const mark = tokens[match.from]!.kind === 'sym';
  let to = match.to;
  while (mark && tokens[to]?.text === '?') to += 1;
  return mark || last ? { ...time, to, unsure: true } : time;
}

const REACH_OF_DOUBT = 8;

/** Words of doubt before a date, in its own piece of the clause. */
function doubtBefore(
  tokens: readonly Token[],
  time: TimePhrase,
  from: number,
  boundaries: readonly Boundary[],
): TimePhrase {
  for (let at = time.from - 1; at >= Math.max(from, time.from - REACH_OF_DOUBT); at -= 1) {
    if (boundaries[at] !== 'none' && tokens[at]!.text !== '(') break;
    const match = tokens[at]!.kind === 'sym' ? undefined : phraseAt(unsure, tokens, at);
    if (match && match.to <= time.from) return { ...time, unsure: true };
  }
  return time;
}

/** A line is looked at from several sides; what was read of it is kept until the sheet is read. */
const MOST_KEPT = 12_000;
const kept = new Map<string, Map<string, Passage>>();

/** Lets go of everything kept; for when a sheet has been read. */
export function forgetPassages(): void {
  kept.clear();
}

/** Reads the pieces of a text: dates, cues, words of the printing, and what parts them. */
export function passageOf(text: string, language?: string): Passage {
  const inLanguage = kept.get(language ?? '') ?? new Map<string, Passage>();
  const before = inLanguage.get(text);
  if (before) return before;
  if (inLanguage.size >= MOST_KEPT) inLanguage.clear();
  const passage = readPieces(text, language);
  inLanguage.set(text, passage);
  kept.set(language ?? '', inLanguage);
  return passage;
}

function readPieces(text: string, language: string | undefined): Passage {
  const tokens = tokensOf(text);
  const masked = notDates(tokens);
  const boundaries = tokens.map((_, at) => boundaryAt(tokens, at));
  const spoken = hasWeakMonth(tokens) ? spokenIn(tokens, language) : NO_LANGUAGE;
  let free = 0;
  const times = phrasesOfTime(tokens, masked, spoken).map((time) => {
    const doubted = doubtBehind(tokens, time);
    const whole = doubted.unsure ? doubted : doubtBefore(tokens, doubted, free, boundaries);
    free = whole.to;
    return whole;
  });
  const roles: Role[] = tokens.map((_, at) => (masked[at] ? 'number' : 'free'));
  for (const time of times) {
    roles.fill('date', time.from, time.to);
    boundaries.fill('none', time.from, time.to);
  }
  const printing = printingSpans(tokens, (at) => roles[at] === 'date', text);
  for (const span of printing) roles.fill('printing', span.from, span.to);
  const isDate = (at: number) => roles[at] === 'date';
  const cues = cuesIn(tokens, (at) => isDate(at) || roles[at] === 'printing').filter(
    (cue) => !cue.touching || times.length === 0 || besideDate(tokens, isDate, cue),
  );
  for (const cue of cues) markCue(tokens, cue, roles);
  return { text, tokens, times, cues, printing, roles, boundaries };
}

/** A cue's own nouns that are sources (`receipt`, `checklist`), and names in it, stay free. */
function markCue(tokens: readonly Token[], cue: Cue, roles: Role[]): void {
  for (let at = cue.from; at < cue.to; at += 1) {
    const noun = phraseAt(sourceNouns, tokens, at);
    const sighting = cue.meaning === 'seen-by' || cue.meaning === 'unlisted-on';
    const name =
      cue.meaning === 'unlisted-on' && at > cue.from && /^\p{Lu}/u.test(tokens[at]!.text);
    const verb = /^(?:not|t)$/u.test(tokens[at - 1]?.norm ?? '');
    if ((noun && sighting && !verb) || name) continue;
    roles[at] = 'cue';
  }
}
