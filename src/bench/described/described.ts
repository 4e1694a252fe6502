import { within } from '../grade/amounts.ts';
import type { Amount, Measure, Side } from '../grade/types.ts';
import { findWords, type Phrase } from './find-words.ts';
import type { Meaning } from './words.ts';

/** One thing that the seller's words promise, beside what was measured. */
export interface Compared {
  /** As the seller wrote them. */
  readonly words: string;
  /** Places in the listing, in UTF-16 units, the end not included. */
  readonly from: number;
  readonly to: number;
  readonly side: Side;
  readonly measure: Measure;
  /** The most that the words allow, in the unit of the measure. */
  readonly atMost: number;
  /** What is expected to be there, and its standard error. */
  readonly found: { readonly mean: number; readonly sd: number };
  /** Probability that more is there than the words allow. */
  readonly pMore: number;
  /** `disagrees` from 0.9, `agrees` up to 0.1 where the pictures would have shown it, else `open`. */
  readonly says: 'agrees' | 'disagrees' | 'open';
  /** Faults of this kind that the listing itself names. */
  readonly named: readonly string[];
}

/** A listing's condition words beside a copy's measurements. */
export interface Described {
  readonly compared: readonly Compared[];
  /** Promised, but the pictures at hand could not show it. */
  readonly unseen: readonly { readonly side: Side; readonly measure: Measure }[];
  /** True where no condition word was found, so that nothing was promised. */
  readonly silent: boolean;
}

/** From here words and measurements are said to differ. Judgement, no source. */
const DISAGREES = 0.9;

/** A look that would show less than this of a fault cannot say that it is absent. Judgement, no source. */
const SHOWN = 0.7;

/**
 * What the seller's words promise, phrase by phrase, against what was measured. Where several
 * phrases speak of one measure, each is compared; a fault that the listing names elsewhere is said
 * beside it, since a promise and an admission may stand in one listing.
 *
 * Words are the seller's, limits the collector's: a difference is a reason to ask, not a verdict.
 */
export function compareWithWords(
  listing: string,
  list: readonly Meaning[],
  amounts: readonly Amount[],
): Described {
  const phrases = saidOnce(findWords(listing, list));
  const named = (measure: Measure) =>
    phrases
      .filter(({ meanings }) => meanings.some((m) => m.measure === measure && m.atMost === null))
      .map(({ words }) => words);
  const pairs = phrases.flatMap(({ words, from, to, meanings }) =>
    meanings.flatMap((meaning) =>
      meaning.atMost === null
        ? []
        : facesOf(meaning).map((side) => ({
            words,
            from,
            to,
            side,
            meaning,
            atMost: meaning.atMost as number,
          })),
    ),
  );
  const amountOf = (side: Side, measure: Measure) =>
    amounts.find((amount) => amount.side === side && amount.measure === measure);
  return {
    compared: pairs.flatMap(({ meaning: { measure }, ...pair }) => {
      const amount = amountOf(pair.side, measure);
      if (!amount || amount.shown === 0) return [];
      return [{ ...pair, measure, ...judged(amount, pair.atMost), named: named(measure) }];
    }),
    unseen: distinct(pairs.map(({ side, meaning }) => ({ side, measure: meaning.measure }))).filter(
      ({ side, measure }) => (amountOf(side, measure)?.shown ?? 0) < SHOWN,
    ),
    silent: phrases.length === 0,
  };
}

/** Phrases without those that a listing repeats, in its title and its text. */
function saidOnce(phrases: readonly Phrase[]): readonly Phrase[] {
  const same = ({ words }: Phrase, other: Phrase) =>
    words.toLowerCase() === other.words.toLowerCase();
  return phrases.filter((one, i) => !phrases.slice(0, i).some((other) => same(one, other)));
}

function facesOf({ side }: Meaning): readonly Side[] {
  return side ? [side] : ['front', 'back'];
}

function judged(amount: Amount, atMost: number): Pick<Compared, 'found' | 'pMore' | 'says'> {
  const pMore = 1 - within(amount.parts, atMost);
  const mean = amount.parts.reduce((sum, part) => sum + part.weight * part.mean, 0);
  const square = amount.parts.reduce(
    (sum, part) => sum + part.weight * (part.sd ** 2 + part.mean ** 2),
    0,
  );
  const says =
    pMore >= DISAGREES
      ? 'disagrees'
      : pMore <= 1 - DISAGREES && amount.shown >= SHOWN
        ? 'agrees'
        : 'open';
  return { found: { mean, sd: Math.sqrt(Math.max(0, square - mean ** 2)) }, pMore, says };
}

function distinct<T extends { readonly side: Side; readonly measure: Measure }>(
  list: readonly T[],
): readonly T[] {
  const seen = new Map(list.map((item) => [`${item.side} ${item.measure}`, item]));
  return [...seen.values()];
}
