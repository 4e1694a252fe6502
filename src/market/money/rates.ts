import type { Day } from '../../evidence/index.ts';
import { type Currency, type Money, moneyOf } from './currencies.ts';
import { dividedBy, type Exact, exactOf, times } from './exact.ts';

/** Units of a currency for one euro on a day, as central banks publish them. */
export interface RateRow {
  readonly day: Day;
  readonly currency: Currency;
  /** A decimal number as written. */
  readonly perEur: string;
}

/** A rate that was used, and the day it is of. */
export interface UsedRate {
  readonly currency: Currency;
  readonly perEur: Exact;
  /** The day that the rate was published for; null for the euro itself. */
  readonly of: Day | null;
  /** `last`: the last one before the day asked for. `first`: there is none before, so the first one after. */
  readonly how: 'of the day' | 'last' | 'first' | 'euro';
}

/** Rates of exchange by currency and day. */
export interface Rates {
  /**
   * The rate of a day; without a day the newest. Undefined where the currency has no rate at all.
   */
  on(currency: Currency, day: Day | null): UsedRate | undefined;
}

const EURO: UsedRate = { currency: 'EUR', perEur: exactOf(1), of: null, how: 'euro' };

/** Rates from rows in any order; of two for one day the later row stands. */
export function ratesOf(rows: readonly RateRow[]): Rates {
  const byCurrency = new Map<Currency, Map<Day, string>>();
  for (const { day, currency, perEur } of rows) {
    const days = byCurrency.get(currency) ?? new Map<Day, string>();
    byCurrency.set(currency, days.set(day, perEur));
  }
  const sorted = new Map(
    [...byCurrency].map(([code, days]) => [code, [...days].sort((a, b) => a[0] - b[0])] as const),
  );
  return {
    on(currency, day) {
      if (currency === 'EUR') return EURO;
      const days = sorted.get(currency);
      if (days === undefined) return undefined;
      const at = day === null ? days.length - 1 : lastUpTo(days, day);
      const [of, perEur] = days[Math.max(at, 0)] as [Day, string];
      const how = at < 0 ? 'first' : day === null || of === day ? 'of the day' : 'last';
      return { currency, perEur: exactOf(perEur), of, how };
    },
  };
}

/** Index of the last entry whose day is `day` or before; -1 without one. */
function lastUpTo(days: readonly (readonly [Day, string])[], day: Day): number {
  let from = 0;
  let to = days.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((days[middle] as readonly [Day, string])[0] <= day) from = middle + 1;
    else to = middle;
  }
  return from - 1;
}

/** An exact amount of one currency in another, not rounded, both by the euro. */
export function exchanged(amount: Exact, from: UsedRate, to: UsedRate): Exact {
  if (from.currency === to.currency) return amount;
  return dividedBy(times(amount, to.perEur), from.perEur);
}

/** The same, rounded to the smallest unit of `to`. */
export function exchangedMoney(amount: Exact, from: UsedRate, to: UsedRate): Money {
  return moneyOf(exchanged(amount, from, to), to.currency);
}
