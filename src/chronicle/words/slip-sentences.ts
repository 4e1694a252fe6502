import type { ToldClaim, ToldPrinting } from '../account/types.ts';
import { tellEdtf } from './days.ts';
import { tellP } from './numbers.ts';
import type { Sentence, Telling } from './telling.ts';
import type { Phrases } from './types.ts';

/** What sources say of a printing that the evidence makes improbable, and how that came about. */
export function slipSentences({ release }: ToldPrinting, { phrases, source }: Telling): Sentence[] {
  return release.claims
    .filter(({ slip }) => slip)
    .map((claim) => ({
      figure: claim.key,
      text: slipSentence(claim, release.best, phrases, source(claim.source)),
    }));
}

/** Probability from which a slip may yet be right. Judgement, no source. */
const MAY_BE_RIGHT = 0.2;

function slipSentence(
  claim: ToldClaim,
  best: string | null,
  phrases: Phrases,
  source: string,
): string {
  const { sentences } = phrases;
  const [said, p] = [tellEdtf(phrases, claim.value), tellP(phrases, claim.pRight)];
  if (claim.pRight >= MAY_BE_RIGHT) return sentences.mayBeRight(source, said, p);
  const years = yearsOff(claim, best);
  return claim.property === 'label-year' && years !== 0
    ? sentences.labelYear(source, said, years)
    : sentences.slip(source, said, howItCame(claim, phrases), p);
}

/** How a claim came about: in English as closely as dating tells it, else by its reading. */
export function howItCame(
  { explanation, reading }: ToldClaim,
  { language, readings }: Phrases,
): string {
  return language === 'en' ? explanation : readings[reading];
}

/** Whole years by which a label is late; negative where it is early. */
function yearsOff({ span }: ToldClaim, best: string | null): number {
  return span[0] === null || best === null
    ? 0
    : Number(span[0].slice(0, 4)) - Number(best.slice(0, 4));
}
