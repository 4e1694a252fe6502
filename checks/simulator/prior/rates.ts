import type { Chance } from '../chance.ts';
import type { Design, Release } from './design.ts';
import { LEVELS, type Level, oddsOf, READINGS, type Reading, WIDEST } from './numbers.ts';

/** Shares of the readings for a source at a release, in the order of `READINGS`. */
export type SharesOf = (source: number, release: Release) => readonly number[];

const NEEDS_LAG: readonly Reading[] = ['other-moment', 'near-moment'];
const SHUT_BY_LAG: readonly Reading[] = ['day-before', 'day-after', 'few-days'];

/**
 * Draws the shares of the readings: log odds against `right` that are sums of effects of the
 * dossier, the kind of source, its era, the source, and the source in a market.
 *
 * @param eraOf era of each release
 * @param lags of each source, 0 for none
 */
export function drawShares(
  chance: Chance,
  { sources }: Design,
  eraOf: readonly number[],
  lags: readonly number[],
): SharesOf {
  const effect = drawEffects(chance);
  const known = new Map<string, number[]>();
  return (s, { index, market }) => {
    const { kind } = sources[s]!;
    const cell = `${s} ${market} ${eraOf[index]}`;
    const found = known.get(cell);
    if (found) return found;
    const all =
      effect(LEVELS.dossier.all, '', 'all') +
      effect(LEVELS.kind.all, kind, 'all') +
      effect(LEVELS.era.all, `${kind} ${eraOf[index]}`, 'all') +
      effect(LEVELS.source.all, `${s}`, 'all') +
      effect(LEVELS.market.all, `${s} ${market}`, 'all');
    const odds = oddsOf(kind).map((prior, r) => {
      const reading = READINGS[r]!;
      if (reading === 'right') return 1;
      if ((lags[s] === 0 ? NEEDS_LAG : SHUT_BY_LAG).includes(reading)) return 0;
      const own =
        effect(LEVELS.dossier.one, '', reading) +
        effect(LEVELS.kind.one, kind, reading) +
        effect(LEVELS.source.one, `${s}`, reading) +
        effect(LEVELS.market.one, `${s} ${market}`, reading);
      return prior * Math.exp(own + (reading === 'other-moment' ? 0 : all));
    });
    const total = odds.reduce((sum, o) => sum + o, 0);
    const shares = odds.map((o) => o / total);
    known.set(cell, shares);
    return shares;
  };
}

/** Effects, each drawn when it is first asked for, and each level's spread likewise. */
function drawEffects(chance: Chance): (level: Level, of: string, reading: string) => number {
  const spreads = new Map<Level, number>();
  const effects = new Map<Level, Map<string, number>>();
  return (level, of, reading) => {
    const spread = spreads.get(level) ?? drawSpread(chance, level);
    spreads.set(level, spread);
    const own = effects.get(level) ?? new Map<string, number>();
    effects.set(level, own);
    const key = `${of} ${reading}`;
    const value = own.get(key) ?? chance.normal(0, spread);
    own.set(key, value);
    return value;
  };
}

/** A standard deviation whose square is inverse-gamma, cut off where it is not believed. */
function drawSpread(chance: Chance, { sd, firm }: Level): number {
  if (firm === Infinity) return sd;
  for (;;) {
    const variance = (firm * sd * sd) / 2 / chance.gamma(firm / 2);
    if (variance <= (WIDEST * sd) ** 2) return Math.sqrt(variance);
  }
}
