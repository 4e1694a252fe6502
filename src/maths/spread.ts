import type { Chance } from './chance.ts';

/** A standard deviation with its half-t prior, as it is drawn and drawn again. */
export interface Spread {
  /** Standard deviation. */
  sd: number;
  /** The auxiliary variance of the prior's mixture. */
  mixing: number;
  /** Scale of the half-t prior. */
  readonly scale: number;
}

/** A spread that begins at its prior's scale. */
export function spreadOf(scale: number): Spread {
  return { sd: scale, mixing: 1, scale };
}

/**
 * Draws a standard deviation anew from what it spreads, under a half-t prior of `df` degrees of
 * freedom, by the inverse-gamma mixture of `huang:2013`.
 *
 * @param squares sum of squares of what it spreads
 * @param count how many there are
 * @param df degrees of freedom of the prior: few leave room for a spread far above its scale
 */
export function redraw(
  spread: Spread,
  random: Chance,
  squares: number,
  count: number,
  df = 3,
): void {
  const precision = random.gamma((df + count) / 2) / (df / spread.mixing + squares / 2);
  spread.mixing = (df * precision + 1 / spread.scale ** 2) / random.gamma((df + 1) / 2);
  spread.sd = Math.sqrt(1 / precision);
}
