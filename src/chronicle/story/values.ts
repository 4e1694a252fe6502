import type { Account } from '../account/types.ts';
import { figureNamed } from '../figures/figures.ts';
import type { Figure } from '../figures/types.ts';
import { certaintyOf } from '../words/certainty.ts';
import { tellDoubt, tellFigureAsOf } from '../words/figures.ts';
import type { Phrases } from '../words/types.ts';

/** A figure as a story fills it in. */
export interface StoryValue {
  readonly figure: Figure;
  readonly text: string;
}

const PARTS = ['doubt', 'how'] as const;

/**
 * What `[](value:NAME)` is filled in with: the figure with its unit and day; `NAME.doubt` its
 * probability or interval, `NAME.how` the word for how sure it is. Undefined for unknown names.
 */
export function storyValue(
  name: string,
  account: Account,
  phrases: Phrases,
): StoryValue | undefined {
  const whole = figureNamed(account, name);
  if (whole) return { figure: whole, text: tellFigureAsOf(whole, account, phrases) };
  const part = PARTS.find((one) => name.endsWith(`.${one}`));
  const figure = part && figureNamed(account, name.slice(0, -part.length - 1));
  if (!figure) return undefined;
  if (part === 'doubt') return { figure, text: tellDoubt(figure, phrases) };
  const p = 'p' in figure.value ? figure.value.p : null;
  return p === null ? undefined : { figure, text: phrases.certainty[certaintyOf(p)] };
}
