import type { Finding } from '../compare/finding.ts';
import { sentenceOf } from '../compare/words.ts';

/** What may point to an alteration: the ratio of two explanations, never a verdict. */
export interface Sign {
  readonly of: 'trimmed' | 'recoloured' | 'swapped-back';
  readonly findings: readonly Finding[];
  /** Above 0 for the first explanation. */
  readonly log10Lr: number;
  readonly between: readonly [string, string];
  readonly words: string;
  /** What limits it, in sentences. */
  readonly cautions: readonly string[];
}

/** Findings put together, taken as independent of each other. */
export function signOf(
  of: Sign['of'],
  findings: readonly Finding[],
  between: Sign['between'],
  cautions: readonly string[],
): Sign {
  const log10Lr = findings.reduce((sum, finding) => sum + finding.log10Lr, 0);
  return { of, findings, log10Lr, between, words: sentenceOf(log10Lr, between), cautions };
}
