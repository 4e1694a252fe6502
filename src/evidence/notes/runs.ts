import type { Passage } from './passage.ts';
import { type PhraseMatch, phraseAt, phraseBook, phrasesIn } from './phrases.ts';
import { plain, type Token } from './tokens.ts';
import {
  BEFORE_SOURCE,
  BEHIND_SOURCE,
  FILLERS,
  LIGHT_BEFORE_SOURCE,
  SAYS,
  SOURCE_NOUNS,
} from './words/source-words.ts';

/** Words in a row that could name a source, with the signs around them that speak for it. */
export interface Run {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** How much speaks for its naming a source; from `ENOUGH` on it is taken as one. */
  readonly score: number;
  /** `lead`: it speaks of what follows; `trail`: of what went before. */
  readonly place: 'lead' | 'trail' | 'either';
  /** It opens the line and a colon follows: it holds to the line's end. */
  readonly label: boolean;
}

/** The score from which on a run of words is taken as a source. */
export const ENOUGH = 3;

const before = phraseBook([[true, BEFORE_SOURCE]] as const);
const behind = phraseBook([[true, BEHIND_SOURCE]] as const);
const says = phraseBook([[true, SAYS]] as const);
const nouns = phraseBook([[true, SOURCE_NOUNS]] as const);
const fillers = new Set(Object.values(FILLERS).flatMap((row) => row.split(' ').map(plain)));
const light = new Set(
  Object.values(LIGHT_BEFORE_SOURCE).flatMap((row) => row.split(/[ |]/u).map(plain)),
);
const INNER = new Set('of de du des der la le the & and und et y e di for to von van i'.split(' '));
const LIGHT_VERBS = new Set(
  'has have had a ha ma hat tem tiene read show date dates gives give got'.split(' '),
);
/** Nouns that name a source only with a name beside them. */
const WEAK_NOUNS = new Set(
  'magazine mag shop shops store paper box publisher club post record sheet collector owner collectors kiosk butik seller friend colleague printer printers minutes file folder notes laden boutique tienda loja negozio winkel kauppa butikk sklep obchod heft revue'.split(
    ' ',
  ),
);
/** Words that speak in a note and are no source. */
const NOBODY = new Set(
  'back front reverse card it this one somebody someone nobody people everyone side bottom corner edge number version copy mine his hers that they which foil ruckseite vorderseite verso dos reverso anverso takapuoli baksida bagside bakside'.split(
    ' ',
  ),
);
const SAW =
  /^(?:saw|photographed|bought|spotted|found|had|got|owns|filmed|kaufte|sah|vit|acheta|vio|viu|vide|comprou|naki|osti|sag|kopte|kobte|kjopte|widzial|kupil|videl|koupil)$/u;
const LOCATOR = /^(?:p|pp|page|pages|pg|seite|sivu|pag|str)$/u;

/** Whether a verb stands there by which a source speaks. */
export const isSaying = (tokens: readonly Token[], at: number) =>
  phraseAt(says, tokens, at) !== undefined;

const isCapital = (token: Token | undefined) => token !== undefined && /^\p{Lu}/u.test(token.text);

/** Tokens that can be part of a name. */
function fitsName(passage: Passage, at: number): boolean {
  const token = passage.tokens[at];
  if (!token || passage.roles[at] === 'date' || passage.roles[at] === 'cue') return false;
  if (passage.boundaries[at] !== 'none') return false;
  if (token.kind === 'sym') return /^[-'.&#@"“”„«»!]$/u.test(token.norm) || token.text === '’';
  if (token.kind === 'link') return true;
  return true;
}

function isFiller(passage: Passage, at: number): boolean {
  const token = passage.tokens[at]!;
  if (token.kind === 'sym') return true;
  return (
    token.kind === 'word' &&
    fillers.has(token.norm) &&
    !(isCapital(token) && token.text.length > 3 && at > 0)
  );
}

/** Whether a token breaks a name in two: a filler that does not stand inside a capital name. */
function breaks(passage: Passage, at: number): boolean {
  const { tokens } = passage;
  const token = tokens[at]!;
  if (phraseAt(nouns, tokens, at)) return false;
  if (token.kind === 'sym' && /^["“”„«»]$/u.test(token.text)) return true;
  if (passage.roles[at] === 'printing') return !lendsItself(passage, at);
  if (token.kind !== 'word') return false;
  const inner = INNER.has(token.norm) && isCapital(tokens[at - 1]) && isCapital(tokens[at + 1]);
  const author =
    /^(?:by|from|in|at|de|du|von|del|di|da|av|af|vom|no|na)$/u.test(token.norm) &&
    isCapital(tokens[at + 1]) &&
    phraseAt(nouns, tokens, at - 1)?.to === at;
  if (author) return false;
  if (inner || (isCapital(token) && isCapital(tokens[at + 1]) && at > 0)) return false;
  if (fillers.has(token.norm)) return true;
  const verb = phraseAt(says, tokens, at);
  return verb !== undefined && !isCapital(token);
}

/** A language or country right before a source's noun belongs to its name: `German price list`. */
function lendsItself(passage: Passage, at: number): boolean {
  const span = passage.printing.find((s) => s.from <= at && at < s.to);
  if (!span) return false;
  if (span.column === 'product') return phraseAt(nouns, passage.tokens, span.to - 1) !== undefined;
  if (span.column !== 'language' && span.column !== 'market') return false;
  for (let here = span.to; here < span.to + 3; here += 1) {
    if (here < passage.tokens.length && phraseAt(nouns, passage.tokens, here))
      return fitsName(passage, here);
    if (!fitsName(passage, here) || passage.roles[here] !== 'free') return false;
  }
  return false;
}

/** Cuts edges that say nothing and page references off a run. */
function trimmed(passage: Passage, from: number, to: number): [number, number] {
  const { tokens } = passage;
  let [begin, end] = [from, to];
  const noun = (at: number) => phraseAt(nouns, tokens, at) !== undefined;
  while (begin < end && isFiller(passage, begin) && !noun(begin)) begin += 1;
  for (let at = begin + 1; at < end - 1; at += 1) {
    const behind = tokens[at + 1]!.text === '.' ? at + 2 : at + 1;
    if (LOCATOR.test(tokens[at]!.norm) && behind < to && tokens[behind]?.kind === 'num') end = at;
  }
  while (end > begin && isFiller(passage, end - 1) && !noun(end - 1)) {
    if (tokens[end - 1]!.text === '.' && tokens[end - 2]!.text.length <= 4 && end < to) break;
    end -= 1;
  }
  return [begin, end];
}

function textOf(passage: Passage, from: number, to: number): string {
  const { tokens, text } = passage;
  return text.slice(tokens[from]!.start, tokens[to - 1]!.end).replace(/\s+/gu, ' ');
}

function endsAt(
  book: typeof before,
  tokens: readonly Token[],
  at: number,
): PhraseMatch<boolean> | undefined {
  for (let from = Math.max(0, at - 5); from < at; from += 1) {
    const match = phraseAt(book, tokens, from);
    if (match?.to === at) return match;
  }
  return undefined;
}

function markerScore(passage: Passage, from: number): number {
  const { tokens } = passage;
  let start = from;
  while (
    start > 0 &&
    start > from - 2 &&
    /^(?:the|a|an|my|our|le|la|l|el|il|lo|der|die|das|dem|den|de|het|o|os|as|')$/u.test(
      tokens[start - 1]!.norm,
    )
  ) {
    start -= 1;
  }
  const marker = endsAt(before, tokens, from) ?? endsAt(before, tokens, start);
  if (!marker) {
    const cue = passage.cues.find((c) => c.to === start);
    return cue && /^(?:in|at|on|by)$/u.test(tokens[cue.to - 1]!.norm) ? 0.5 : 0;
  }
  const words = tokens
    .slice(marker.from, marker.to)
    .map((token) => token.norm)
    .filter((norm) => /\p{L}|@/u.test(norm));
  const strong =
    words.some((word) => !light.has(word) && !fillers.has(word)) ||
    (words.length === 1 && !light.has(words[0]!));
  const colon = passage.tokens[marker.to - 1]?.text === ':';
  if (strong || colon) return 3;
  return words[0] === 'in' && words.length === 1 ? 0.5 : 1;
}

function capitalScore(passage: Passage, from: number, to: number): number {
  const { tokens, boundaries } = passage;
  let capitals = 0;
  let words = 0;
  for (let at = from; at < to; at += 1) {
    if (tokens[at]!.kind === 'cjk') return 1;
    if (tokens[at]!.kind !== 'word' || INNER.has(tokens[at]!.norm)) continue;
    words += 1;
    if (isCapital(tokens[at])) capitals += 1;
  }
  if (words === 0 || capitals < words) return capitals > 0 ? 0.5 : 0;
  const opens =
    from === 0 || (boundaries[from - 1] === 'hard' && /^[.!?]$/u.test(tokens[from - 1]!.text));
  if (words > 1) return 2.5;
  return opens ? 1 : 2;
}

/** Whether a date stands in the rest of the clause. */
function dateFollows(passage: Passage, from: number): boolean {
  for (let at = from; at < passage.tokens.length; at += 1) {
    if (passage.roles[at] === 'date') return true;
    if (passage.boundaries[at] === 'hard') return false;
  }
  return false;
}

const NEAREST = 5;

/** Whether a date follows with no boundary between, and none goes before so closely. */
function leadsOn(passage: Passage, from: number, to: number): boolean {
  const { boundaries, roles } = passage;
  let right = to;
  while (right < to + NEAREST && boundaries[right] === 'none' && roles[right] !== 'date')
    right += 1;
  let left = from - 1;
  while (left >= 0 && boundaries[left] === 'none' && roles[left] !== 'date') left -= 1;
  return roles[right] === 'date' && roles[left] !== 'date';
}

function placeOf(
  passage: Passage,
  from: number,
  to: number,
): Pick<Run, 'place' | 'label'> & { plus: number } {
  const { tokens, boundaries, roles } = passage;
  const next = tokens[to];
  if (phraseAt(behind, tokens, to)) return { place: 'either', label: false, plus: 3 };
  const verb = phraseAt(says, tokens, to);
  if (verb) {
    const weak = LIGHT_VERBS.has(tokens[to]!.norm) && verb.to === to + 1;
    return {
      place: dateFollows(passage, to) ? 'lead' : 'either',
      label: false,
      plus: weak ? 2 : 3,
    };
  }
  if (next?.text === ':' || next?.text === '：' || next?.text === '=') {
    const label =
      !boundaries.slice(0, from).includes('hard') && !roles.slice(0, from).includes('date');
    return { place: 'lead', label, plus: 2 };
  }
  const closed = next === undefined || boundaries[to] !== 'none';
  const previous = tokens[from - 1];
  const bracket = previous !== undefined && /^[([（【「]$/u.test(previous.text);
  if (bracket && next && /^[)\]）】」]$/u.test(next.text))
    return { place: 'trail', label: false, plus: 2 };
  if (roles[to] === 'date' || roles[to] === 'cue') {
    const opening = from === 0 || boundaries[from - 1] !== 'none';
    const cue = passage.cues.find((c) => c.from === to);
    if (cue?.meaning === 'label-year') return { place: 'lead', label: false, plus: 2 };
    if (SAW.test(tokens[to]!.norm)) return { place: 'lead', label: false, plus: 2 };
    return { place: opening ? 'lead' : 'either', label: false, plus: opening ? 1 : 0 };
  }
  if (leadsOn(passage, from, to)) return { place: 'lead', label: false, plus: 0 };
  const trailing = closed && from > 0 && boundaries[from - 1] === 'light';
  return { place: 'either', label: false, plus: trailing ? 1.5 : 0 };
}

/** Tokens of words that stand before or behind a source's name and are no part of it. */
function markersIn(passage: Passage): Uint8Array {
  const marked = new Uint8Array(passage.tokens.length);
  for (const match of phrasesIn(before, passage.tokens)) {
    const words = passage.tokens.slice(match.from, match.to).map((token) => token.norm);
    const plainWord = words.every((word) => light.has(word) || fillers.has(word));
    if (!plainWord || words.length > 1) marked.fill(1, match.from, match.to);
  }
  for (const match of phrasesIn(behind, passage.tokens)) marked.fill(1, match.from, match.to);
  return marked;
}

/** Every run of words in a passage that names, or could name, a source. */
export function runsIn(passage: Passage, known: ReadonlySet<string>): Run[] {
  const runs: Run[] = [];
  const marked = markersIn(passage);
  let at = 0;
  while (at < passage.tokens.length) {
    const bracket = inBrackets(passage, at);
    if (bracket !== undefined) {
      const run = scored(passage, at, bracket, known);
      if (run && run.score >= ENOUGH) {
        runs.push(run);
        at = bracket;
        continue;
      }
    }
    if (
      marked[at] ||
      !fitsName(passage, at) ||
      breaks(passage, at) ||
      passage.tokens[at]!.kind === 'sym'
    ) {
      at += 1;
      continue;
    }
    let to = at;
    while (!marked[to] && fitsName(passage, to) && !breaks(passage, to)) to += 1;
    const run = scored(passage, at, to, known);
    if (run) runs.push(run);
    at = to;
  }
  return runs;
}

const LONGEST_IN_BRACKETS = 9;

/** The closing bracket's place, where the words up to it could be one name as they stand. */
function inBrackets(passage: Passage, at: number): number | undefined {
  if (!/^[([（【「]$/u.test(passage.tokens[at - 1]?.text ?? '')) return undefined;
  if (phraseAt(before, passage.tokens, at)) return undefined;
  let to = at;
  while (to < at + LONGEST_IN_BRACKETS && fitsName(passage, to)) {
    if (phraseAt(says, passage.tokens, to) && !isCapital(passage.tokens[to])) return undefined;
    to += 1;
  }
  const closed = /^[)\]）】」]$/u.test(passage.tokens[to]?.text ?? '');
  return closed && to > at && passage.roles[at] === 'free' ? to : undefined;
}

function scored(
  passage: Passage,
  start: number,
  stop: number,
  known: ReadonlySet<string>,
): Run | undefined {
  const [begin, to] = trimmed(passage, start, stop);
  const whole = scoredAs(passage, begin, to, stop, known);
  if (whole && whole.score >= ENOUGH) return whole;
  const capital = capitalPart(passage, begin, to);
  if (!capital || (capital[0] === begin && capital[1] === to)) return whole;
  const part = scoredAs(passage, capital[0], capital[1], capital[1], known);
  return part && part.score > (whole?.score ?? 0) ? part : whole;
}

/** The longest row of capital words in a run. */
function capitalPart(passage: Passage, from: number, to: number): [number, number] | undefined {
  let best: [number, number] | undefined;
  for (let at = from; at < to; at += 1) {
    let end = at;
    while (end < to && (isCapital(passage.tokens[end]) || INNER.has(passage.tokens[end]!.norm)))
      end += 1;
    while (end > at && !isCapital(passage.tokens[end - 1])) end -= 1;
    if (isCapital(passage.tokens[at]) && end - at > (best ? best[1] - best[0] : 0))
      best = [at, end];
    if (end > at) at = end;
  }
  return best;
}

function scoredAs(
  passage: Passage,
  from: number,
  to: number,
  stop: number,
  known: ReadonlySet<string>,
): Run | undefined {
  if (from >= to) return undefined;
  const text = textOf(passage, from, to);
  if (!/\p{L}.*\p{L}/su.test(text)) return undefined;
  const { tokens } = passage;
  if (tokens.slice(from, to).every((token) => NOBODY.has(token.norm) || fillers.has(token.norm)))
    return undefined;
  let noun = 0;
  for (let at = from; at < to; at += 1) {
    if (phraseAt(nouns, tokens, at))
      noun = Math.max(
        noun,
        WEAK_NOUNS.has(tokens[at]!.norm) && tokens[at - 1]?.norm !== 'my' ? 1.5 : 3,
      );
  }
  const { place, label, plus } = placeOf(passage, from, stop);
  const long = to - from > 7 ? -2 : 0;
  const score =
    noun +
    (known.has(plain(text)) ? 3 : 0) +
    markerScore(passage, from) +
    capitalScore(passage, from, to) +
    plus +
    long;
  return { from, to, text, score, place, label };
}
