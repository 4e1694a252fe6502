import {
  before,
  behind,
  breaks,
  fillers,
  fitsName,
  INNER,
  isCapital,
  light,
  nouns,
  says,
  textOf,
  trimmed,
} from './names-in-words.ts';
import type { Passage } from './passage.ts';
import { type PhraseMatch, phraseAt, phrasesIn } from './phrases.ts';
import { type Known, titleEnd } from './titles.ts';
import { plain, type Token } from './tokens.ts';

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
  /** A title that the dossier knows stands there as it is: its words say nothing else. */
  readonly title?: true;
}

/** The score from which on a run of words is taken as a source. */
export const ENOUGH = 3;

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
  'back front reverse card it this one somebody someone nobody people everyone side bottom corner grader graders same source sources edge number version copy mine his hers that they which foil ruckseite vorderseite verso dos reverso anverso takapuoli baksida bagside bakside'.split(
    ' ',
  ),
);
const SAW =
  /^(?:saw|photographed|bought|spotted|found|had|got|owns|filmed|kaufte|sah|vit|acheta|vio|viu|vide|comprou|naki|osti|sag|kopte|kobte|kjopte|widzial|kupil|videl|koupil)$/u;

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
export function runsIn(passage: Passage, known: Known): Run[] {
  const runs: Run[] = [];
  const marked = markersIn(passage);
  let at = 0;
  while (at < passage.tokens.length) {
    const title = titleEnd(passage, at, known);
    const titled = title === undefined ? undefined : scoredAs(passage, at, title, title, known);
    if (title !== undefined && titled) {
      runs.push({ ...titled, title: true });
      at = title;
      continue;
    }
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
