import type { Wish } from './types.ts';

/** Lowest and highest value that a rate of a dossier is drawn from, evenly. */
type Range = readonly [low: number, high: number];

/** The ranges that make dossiers of one style and difficulty what they are. */
export interface Temper {
  /** Share of claims of other properties than on-sale. */
  readonly others: Range;
  /** Share of sources that derive from another. */
  readonly copying: Range;
  /** Wrong statements of an average source, mistakes and lags apart. */
  readonly wrong: Range;
  /** Share of sources that date another moment as a habit. */
  readonly lagged: Range;
  /** Shift, on the logit scale, of how often a source states a day and not a month or year. */
  readonly exact: Range;
  /** Share of releases of which nobody states the exact day. */
  readonly nobody: Range;
  /** How unevenly sources have rows for the printings of a release. */
  readonly obscure: Range;
  /** Further printings of a release for each first one. */
  readonly perRelease: Range;
  /** Share of releases from which one printing stands apart, on a day of its own. */
  readonly apart: Range;
  /** Share of on-sale rows that concern one of two printings, or the product. */
  readonly vague: Range;
}

const MEDIUM: Temper = {
  others: [0.15, 0.42],
  copying: [0, 0.35],
  wrong: [0.1, 0.42],
  lagged: [0, 0.25],
  exact: [-2, 0.5],
  nobody: [0, 0.15],
  obscure: [0.1, 0.9],
  perRelease: [0.1, 1],
  apart: [0, 0.03],
  vague: [0, 0.04],
};

const HARD: Temper = {
  ...MEDIUM,
  copying: [0.15, 0.55],
  wrong: [0.35, 0.68],
  lagged: [0.05, 0.35],
  nobody: [0, 0.3],
  apart: [0, 0.05],
  vague: [0, 0.06],
};

/** The ranges for a wish. Large dossiers have more rows for each printing and less in the dark. */
export function temperOf(wish: Wish): Temper {
  const base = wish.difficulty === 'hard' ? HARD : MEDIUM;
  const sized: Temper =
    wish.printings > 1000
      ? { ...base, others: [0.15, 0.25], nobody: [0, 0.04], obscure: [0.1, 0.4] }
      : base;
  if (wish.style === 'sparse') return { ...sized, others: [0, 0.25], exact: [-5, -1.5] };
  if (wish.style === 'copies') return { ...sized, copying: [0.7, 0.98], others: [0.05, 0.2] };
  return sized;
}
