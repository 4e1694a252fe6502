import type { WireDating } from '../../contract/index.ts';
import { dayFrom, sayDay, sayEdtf } from '../../evidence/index.ts';
import { sayWindow } from './days.ts';
import { sayP } from './numbers.ts';

type Dated = WireDating['printings'][number];

/** What stands at the right of a lane: the day or window, and what that is worth. */
export interface Said {
  readonly main: string;
  readonly sub: string;
  readonly p: number | null;
}

/** The answer for one printing in two short lines; `short` shortens the months. */
export function sayDated(dated: Dated | undefined, short = true): Said {
  if (!dated) return { main: 'not dated yet', sub: '', p: null };
  if (dated.state === 'day' && dated.best) {
    return { main: sayDay(dayFrom(dated.best), short), sub: sayP(dated.p_best), p: dated.p_best };
  }
  if (dated.state === 'window' && dated.interval95) {
    const main = sayWindow(...dated.interval95, short);
    return { main, sub: `a window, ${sayP(dated.p_interval)}`, p: dated.p_interval };
  }
  if (dated.state === 'bounded') {
    const main = dated.interval95 ? sayWindow(...dated.interval95, short) : sayEdtf(dated.edtf);
    return { main, sub: 'only bounded', p: null };
  }
  return { main: 'not known', sub: 'nothing bounds it', p: null };
}

/** The second likeliest day or stretch, where one is worth naming. */
export function sayElse(dated: Dated): string {
  const days = [...dated.days].sort((a, b) => b[1] - a[1]);
  const second = days.find(([day]) => day !== dated.best);
  if (!second || second[1] < 0.01) return '';
  return `else most likely ${sayDay(dayFrom(second[0]))} (${sayP(second[1])})`;
}
