import { isBeside } from './adjacency.ts';
import type { Cue, CueMeaning } from './cues.ts';
import type { TimePhrase } from './dates/phrases-of-time.ts';
import type { Passage } from './passage.ts';

/** What a date in a passage was found to be the date of. */
export interface Governed {
  readonly meaning: CueMeaning;
  readonly cue: Cue;
  /** Tokens and boundaries between the two; the larger, the less sure. */
  readonly cost: number;
}

const PER_BOUNDARY = 6;
const PER_RANK = 4;
const FARTHEST = 22;
/** A new statement begins with these. */
const AND =
  /^(?:and|but|while|whereas|und|aber|et|mais|y|pero|e|mas|ma|och|og|men|ja|mutta|i|ale|en|maar|so|because|though)$/u;

/** A year alone is what labels and copyright lines bear. */
function suits(meaning: CueMeaning, time: TimePhrase): boolean {
  if (meaning !== 'label-year' && meaning !== 'copyright-year') return true;
  const part = time.parts[0]!;
  return part.month === undefined && part.code === undefined && part.day === undefined;
}

function costOf(passage: Passage, cue: Cue, time: TimePhrase): number {
  const left = cue.to <= time.from;
  const [from, to] = left ? [cue.to, time.from] : [time.to, cue.from];
  if (!suits(cue.meaning, time)) return Number.POSITIVE_INFINITY;
  if (cue.touching && !isBeside(passage.tokens, from, to)) return Number.POSITIVE_INFINITY;
  if (cue.place === 'before-date' && !left) return Number.POSITIVE_INFINITY;
  let cost = left ? 0 : 2;
  for (let at = from; at < to; at += 1) {
    const boundary = passage.boundaries[at];
    if (boundary === 'hard') return Number.POSITIVE_INFINITY;
    if (passage.roles[at] === 'date') return Number.POSITIVE_INFINITY;
    if (!left && boundary === 'light' && AND.test(passage.tokens[at + 1]?.norm ?? '')) {
      return Number.POSITIVE_INFINITY;
    }
    const colon = left && at === from && /^[:=(]$/u.test(passage.tokens[at]!.text);
    const bracket = !left && at === from && passage.tokens[at]!.text === '(';
    cost += boundary === 'light' && !colon && !bracket ? PER_BOUNDARY : 1;
    if (cost > FARTHEST + 20) return Number.POSITIVE_INFINITY;
  }
  return cost - cue.rank * PER_RANK;
}

interface Pair {
  readonly time: number;
  readonly cue: Cue;
  readonly cost: number;
}

/** Pairs of a date and a cue with no other date between them. */
function pairsOf(passage: Passage): Pair[] {
  const { times, cues } = passage;
  const pairs: Pair[] = [];
  let first = 0;
  times.forEach((time, index) => {
    const previous = times[index - 1]?.to ?? 0;
    const next = times[index + 1]?.from ?? passage.tokens.length;
    while (first < cues.length && cues[first]!.from < previous) first += 1;
    for (let c = first; c < cues.length && cues[c]!.to <= next; c += 1) {
      const cost = costOf(passage, cues[c]!, time);
      if (cost <= FARTHEST) pairs.push({ time: index, cue: cues[c]!, cost });
    }
  });
  return pairs.sort((a, b) => a.cost - b.cost || a.time - b.time);
}

/** A cue that opens its clause as a label: `Cover: May 1996, June 1996; July 1996`. */
function isLabel(passage: Passage, cue: Cue): boolean {
  const colon = /^[:=]$/u.test(passage.tokens[cue.to]?.norm ?? '');
  const opens = cue.from === 0 || passage.boundaries[cue.from - 1] !== 'none';
  return colon && opens;
}

/** Whether a date goes on with the list of the date before it. */
function goesOn(passage: Passage, before: TimePhrase, time: TimePhrase): boolean {
  let words = 0;
  for (let at = before.to; at < time.from; at += 1) {
    if (passage.boundaries[at] === 'hard' || passage.roles[at] === 'cue') return false;
    if (passage.roles[at] !== 'date' && passage.boundaries[at] === 'none') words += 1;
  }
  return words <= 6;
}

/** In `2.2.96 announced for May` the cue speaks of the second date: the first is the ledger's own. */
function plannedAhead(passage: Passage, cue: Cue, time: number): boolean {
  const { times, boundaries, tokens } = passage;
  const next = times[1];
  if (time !== 0 || cue.meaning !== 'announced' || times[0]!.from !== 0 || !next) return false;
  if (cue.to > next.from || cue.from < times[0]!.to) return false;
  if (boundaries.slice(cue.to, next.from).includes('hard')) return false;
  const words = tokens.slice(cue.from, next.from).map((token) => token.norm);
  return words.some((word) => /^(?:for|fur|pour|para|per|voor|zu|to|till|na)$/u.test(word));
}

/** For every date of a passage the cue that says what it is the date of, if any. */
export function governedBy(passage: Passage): (Governed | undefined)[] {
  const { times } = passage;
  const result: (Governed | undefined)[] = times.map(() => undefined);
  const used = new Set<Cue>();
  for (const { time, cue, cost } of pairsOf(passage)) {
    if (result[time] !== undefined || used.has(cue) || plannedAhead(passage, cue, time)) continue;
    result[time] = { meaning: cue.meaning, cue, cost };
    used.add(cue);
  }
  times.forEach((time, index) => {
    const before = result[index - 1];
    if (result[index] !== undefined || !before) return;
    const list =
      before.cue.to <= times[index - 1]!.from && goesOn(passage, times[index - 1]!, time);
    const inherits = list || isLabel(passage, before.cue);
    if (inherits && suits(before.meaning, time)) {
      result[index] = { ...before, cost: before.cost + PER_BOUNDARY };
    }
  });
  return result;
}
