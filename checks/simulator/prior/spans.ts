import { civilOf, dayOf } from '../../../src/evidence/index.ts';
import type { Chance } from '../chance.ts';
import type { SignedHistogram } from './histograms.ts';

/** A month or a year. */
type Coarse = 'month' | 'year';

interface Span {
  readonly lo: number;
  readonly hi: number;
}

/** The month or year so many steps from the one that holds a day. */
function spanOf(day: number, precision: Coarse, steps: number): Span {
  const { year, month } = civilOf(day);
  const start = (n: number) =>
    precision === 'year'
      ? dayOf(year + n, 1, 1)
      : dayOf(year + Math.floor((month - 1 + n) / 12), ((((month - 1 + n) % 12) + 12) % 12) + 1, 1);
  return { lo: start(steps), hi: start(steps + 1) - 1 };
}

const distance = (day: number, { lo, hi }: Span) => Math.max(lo - day, day - hi, 0);

/** Weight of a day outside a coarse value by so many days. */
function beside(days: number): number {
  if (days === 0) return 1;
  if (days === 1) return 0.04;
  if (days <= 10) return 0.02 * 0.8 ** days;
  return days >= 350 && days <= 380 ? 0.004 : 0;
}

/** A day of the month or year that is stated for a day by a reading that keeps near it. */
export function nearSpan(chance: Chance, day: number, precision: Coarse): number {
  const reach = precision === 'month' ? 14 : 2;
  const spans = Array.from({ length: 2 * reach + 1 }, (_, i) => spanOf(day, precision, i - reach));
  return spans[chance.weighted(spans.map((span) => beside(distance(day, span))))]!.lo;
}

/**
 * A day of the month or year that noise states: never the true one, else by the density at its near
 * end times its days, one half at most. Undefined for what is left of the probability.
 */
export function noiseSpan(
  chance: Chance,
  day: number,
  precision: Coarse,
  noise: SignedHistogram,
): number | undefined {
  const reach = precision === 'month' ? 540 : 45;
  const spans = Array.from({ length: 2 * reach + 1 }, (_, i) => spanOf(day, precision, i - reach));
  const weights = spans.map((span) => {
    const away = span.lo > day ? span.lo - day : Math.min(0, span.hi - day);
    return Math.min(0.5, noise.density(away) * (span.hi - span.lo + 1));
  });
  const total = weights.reduce((sum, w) => sum + w, 0);
  const none = Math.max(0, 1 - total);
  return spans[chance.weighted([...weights, none])]?.lo;
}

/** A day near one that is marked approximate: itself in 0.35, else about six days either way. */
export function about(chance: Chance, day: number): number {
  if (chance.yes(0.35)) return day;
  const steps = Array.from({ length: 121 }, (_, i) => i - 60);
  return day + steps[chance.weighted(steps.map((n) => Math.exp(-Math.abs(n) / 6)))]!;
}
