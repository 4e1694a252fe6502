import type { ToldPrinting } from '../account/types.ts';
import { countSentences } from './count-sentences.ts';
import { releaseSentences } from './release-sentences.ts';
import { slipSentences } from './slip-sentences.ts';
import type { Sentence, Telling } from './telling.ts';

/**
 * The facts of a printing in plain sentences: its release and place, slips of its sources, counts
 * and prices. Nothing is in them that the account does not hold.
 */
export function factsOf(printing: ToldPrinting, telling: Telling): readonly Sentence[] {
  return [...releaseFactsOf(printing, telling), ...countSentences(printing, telling)];
}

/** The same without counts and prices, which pages show in tables. */
export function releaseFactsOf(printing: ToldPrinting, telling: Telling): readonly Sentence[] {
  return [...releaseSentences(printing, telling), ...slipSentences(printing, telling)];
}
