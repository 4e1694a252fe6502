import type { Chance } from '../chance.ts';
import { grouped } from '../groups.ts';
import type { Origin } from './design.ts';
import { LAGS, lagWeight, MANNERS, RECURS } from './numbers.ts';
import type { Said } from './said.ts';

/** Draws the lag of each source in days, 0 where it dates no other moment. */
export function drawLags(chance: Chance, sources: readonly Origin[]): number[] {
  const sizes = Array.from({ length: LAGS[1] - LAGS[0] + 1 }, (_, i) => LAGS[0] + i);
  const lags = [0, ...sizes, ...sizes.map((size) => -size)];
  return sources.map(({ kind }) => {
    const { lag } = MANNERS[kind]!;
    const weights = lags.map((days) => (days === 0 ? 1 - lag : lag * lagWeight(Math.abs(days))));
    return lags[chance.weighted(weights)]!;
  });
}

/**
 * Whether the lag of every source that has one recurs among its differences from other sources, as
 * the model wants it: a lag that the data do not show is none.
 */
export function lagsShow(lags: readonly number[], said: readonly Said[]): boolean {
  const exact = said.filter(({ slot }) => slot.property === 'on-sale' && slot.precision === 'day');
  const byRelease = [...grouped(exact, ({ slot }) => slot.release).values()];
  return lags.every((lag, s) => {
    if (lag === 0) return true;
    const differences = byRelease.flatMap((list) => {
      const own = list.find(({ slot }) => slot.source === s);
      const others = list.filter(({ slot }) => slot.source !== s);
      return own && others.length > 0 ? [others.map(({ day }) => own.day - day)] : [];
    });
    const shown = differences.filter((list) => list.includes(lag)).length;
    return shown >= Math.max(RECURS.times, RECURS.share * differences.length);
  });
}
