import { civilOf, dayOf } from '../../../src/evidence/index.ts';
import type { Chance } from '../chance.ts';
import type { SignedHistogram } from './histograms.ts';
import { BY_A_DAY, FEW_DAYS, type Reading } from './numbers.ts';

/** What a source may take a day from besides the release itself. */
export interface Around {
  /** The source's lag, 0 for none. */
  readonly lag: number;
  /** Days of the releases in the rows above and below; undefined where there is none. */
  readonly rows: readonly [above: number | undefined, below: number | undefined];
  /** Days of the other releases of the product. */
  readonly siblings: readonly number[];
  /** Days on covers that some source gives for the release. */
  readonly covers: readonly number[];
  readonly noise: SignedHistogram;
}

/**
 * The day that a reading makes of a true day; undefined where it makes none, which is an impossible
 * value in the model and therefore one that its data never hold. Days filled in are left out
 * altogether: the model takes them from the data, of which three must be alike.
 */
export function readAs(
  chance: Chance,
  reading: Reading,
  day: number,
  around: Around,
): number | undefined {
  switch (reading) {
    case 'right':
      return day;
    case 'day-before':
      return day - 1;
    case 'day-after':
      return day + 1;
    case 'few-days':
      return day + fewDays(chance);
    case 'swapped':
      return swapped(day);
    case 'first-of-month':
      return day - civilOf(day).dayOfMonth + 1;
    case 'year-off':
      return yearOff(chance, day);
    case 'other-moment':
      return day + around.lag;
    case 'near-moment':
      return (
        day + around.lag + (chance.yes(BY_A_DAY) ? (chance.yes(0.5) ? 1 : -1) : fewDays(chance))
      );
    case 'cover-date':
      return around.covers.length === 0 ? undefined : chance.pick(around.covers);
    case 'row-shift':
      return around.rows[chance.whole(0, 1)];
    case 'filled-in':
      return undefined;
    case 'sibling':
      return around.siblings.length === 0 ? undefined : chance.pick(around.siblings);
    case 'noise':
      return day + around.noise.draw(chance);
  }
}

function fewDays(chance: Chance): number {
  const sizes = Array.from(
    { length: FEW_DAYS.to - FEW_DAYS.from + 1 },
    (_, i) => FEW_DAYS.from + i,
  );
  const size = sizes[chance.weighted(sizes.map((n) => FEW_DAYS.fall ** n))]!;
  return chance.yes(FEW_DAYS.late) ? size : -size;
}

function swapped(day: number): number {
  const { year, month, dayOfMonth } = civilOf(day);
  return dayOfMonth > 12 ? day : dayOf(year, dayOfMonth, month);
}

/** A year back or on, as readily as the month invites to it; else the day itself. */
function yearOff(chance: Chance, day: number): number {
  const { year, month, dayOfMonth } = civilOf(day);
  const winter = [1, 2, 11, 12].includes(month);
  const inviting = month === 1 || month === 12 ? 0.8 : 0.4;
  const back = month <= 2 ? inviting : winter ? 0.1 : 0.06;
  const on = month >= 11 ? inviting : winter ? 0.1 : 0.06;
  const years = [-1, 1, 0][chance.weighted([back, on, 1 - back - on])]!;
  if (years === 0) return day;
  return dayOf(year + years, month, month === 2 && dayOfMonth === 29 ? 28 : dayOfMonth);
}
