import { dayOf } from '../../src/evidence/index.ts';
import type { Chance } from './chance.ts';
import type { Temper } from './tempers.ts';

/** Markets and their languages. */
export const MARKETS = [
  ['BR', 'pt'],
  ['FI', 'fi'],
  ['KR', 'ko'],
  ['CZ', 'cs'],
  ['CL', 'es'],
  ['EE', 'et'],
  ['GR', 'el'],
  ['TH', 'th'],
] as const;

/** What the releases of one dossier have in common. */
export interface Rules {
  readonly markets: readonly string[];
  readonly manyMarkets: number;
  readonly sameDay: number;
  readonly delay: readonly number[];
  readonly perRelease: number;
  readonly editions: number;
  readonly waves: number;
  readonly channels: number;
  readonly periodicals: number;
  readonly nobody: number;
  readonly first: number;
  readonly last: number;
}

export function rulesOf(chance: Chance, printings: number, temper: Temper): Rules {
  const most = Math.min(8, 2 + Math.round(Math.log10(printings) * 2));
  const count = chance.whole(Math.max(2, most - 2), most);
  const markets = chance.shuffle(MARKETS.map(([market]) => market)).slice(0, count);
  const first = dayOf(chance.whole(1988, 2006), 1, 1) + chance.whole(0, 364);
  const years = chance.between(1.5, 4) + Math.log10(printings) * chance.between(1, 4);
  return {
    markets,
    manyMarkets: chance.between(0.15, 0.7),
    sameDay: chance.between(0, 0.5),
    delay: markets.map(() => chance.between(10, 320)),
    perRelease: chance.within(temper.perRelease),
    editions: chance.between(0, 0.4),
    waves: chance.between(0, 0.5),
    channels: chance.between(0, 0.35),
    periodicals: chance.yes(0.6) ? chance.between(0.05, 0.25) : 0,
    nobody: chance.within(temper.nobody),
    first,
    last: first + Math.round(years * 365),
  };
}
