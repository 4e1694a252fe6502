import type { TraitValue } from '../traits/value.ts';
import { keyOf, likeness } from '../traits/words.ts';

/** Chance that a letter of a word that was seen rightly is written wrongly. Judgement, no source. */
const TYPO = 0.02;
/** Letters that a wrong one may be. */
const LETTERS = 30;
/** Chance that only a part of the words is told. Judgement, no source. */
const PART = 0.01;
/** How much likelier than a quite unlike value one is that looks the same. Judgement, no source. */
const ALIKE = 8;
/** How likely a value is overlooked, and read as one that the dossier lacks. Judgement, no source. */
const OVERLOOKED = { often: 2, seldom: 0.2 } as const;
const NEW = 0.3;

/** What may be read of a trait: its words, `none`, a number, or something that nobody listed. */
export interface WordChannel {
  /** Keys of words; `none`, `number` and `other` stand after them. */
  readonly words: readonly string[];
  readonly none: number;
  readonly number: number;
  readonly other: number;
  /** `misread[v][u]`: the chance that what is `v` and is misread is taken for `u`; never itself, but for numbers. */
  readonly misread: readonly Float64Array[];
}

/** The channel of a trait with these values; `lacking`: some bearers may well have none. */
export function wordChannel(
  values: readonly (TraitValue | undefined)[],
  lacking: boolean,
): WordChannel {
  const keys = values.flatMap((one) => (one?.is === 'word' ? keyOf(one.word) : []));
  const words = [...new Set(keys)];
  const none = words.length;
  const [number, other] = [none + 1, none + 2];
  const hasNumbers = values.some((one) => one?.is === 'number');
  const misread = Array.from({ length: other + 1 }, (_, v) => {
    const row = new Float64Array(other + 1);
    words.forEach((word, u) => {
      if (u !== v) row[u] = 1 + ALIKE * likeness(words[v] ?? '', word) ** 2;
    });
    if (v !== none) row[none] = lacking ? OVERLOOKED.often : OVERLOOKED.seldom;
    if (hasNumbers) row[number] = v === number ? 6 : 1;
    if (v !== other) row[other] = NEW;
    const sum = row.reduce((all, one) => all + one, 0);
    return row.map((one) => one / sum);
  });
  return { words, none, number, other, misread };
}

/** Where a value stands in the channel. */
export function stateOf(value: TraitValue, channel: WordChannel): number {
  if (value.is === 'none') return channel.none;
  if (value.is === 'number') return channel.number;
  const at = channel.words.indexOf(keyOf(value.word));
  return at < 0 ? channel.other : at;
}

/** The chance of writing just this text, for each thing that may have been perceived. */
export function writtenAs(text: string, { words, other }: WordChannel): Float64Array {
  const key = keyOf(text);
  const chances = new Float64Array(other + 1);
  words.forEach((word, u) => {
    chances[u] = writing(key, word);
  });
  // A text that nobody listed: about one nat a letter, as in running prose (`shannon:1951`).
  chances[other] = 0.02 * Math.exp(-[...key].length);
  return chances;
}

function writing(key: string, word: string): number {
  const letters = [...word].length;
  const longer = Math.max(letters, [...key].length);
  const edits = Math.round((1 - likeness(key, word)) * longer);
  const typed = (TYPO / LETTERS) ** edits * (1 - TYPO) ** Math.max(0, letters - edits);
  return edits === 0 ? typed : Math.max(typed, partOf(key, word));
}

function partOf(key: string, word: string): number {
  const [said, all] = [key.split(' '), new Set(word.split(' '))];
  const isPart = said.every((one) => all.has(one)) && said.length < all.size;
  return isPart ? PART * 2 ** (said.length - all.size) : 0;
}
