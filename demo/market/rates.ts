import type { Chance } from '../../src/maths/index.ts';
import type { Row } from '../table.ts';

/** Where the invented rates begin: units of the currency for one euro. */
const BEGIN: readonly (readonly [string, number])[] = [
  ['GBP', 0.86],
  ['BRL', 5.6],
  ['KRW', 1480],
  ['PLN', 4.35],
];

/** Last day of each month from January 2024 to June 2026. */
export const MONTH_ENDS: readonly string[] = Array.from({ length: 30 }, (_, month) =>
  new Date(Date.UTC(2024, month + 1, 0)).toISOString().slice(0, 10),
);

/** Rows of `rates.csv`: a slow walk, month by month, made up. */
export function rateRows(luck: Chance): readonly Row[] {
  const now = new Map(BEGIN);
  return MONTH_ENDS.flatMap((date) =>
    BEGIN.map(([currency, begin]) => {
      const next = (now.get(currency) ?? begin) * (1 + 0.012 * luck.normal());
      now.set(currency, next);
      return { date, currency, per_eur: next.toPrecision(5) };
    }),
  );
}

/** Units of a currency for one euro on a day: the last rate before it, else the first. */
export function rateOn(rates: readonly Row[], currency: string, day: string): number {
  if (currency === 'EUR') return 1;
  const own = rates.filter((row) => row.currency === currency);
  const last = own.filter((row) => (row.date ?? '') <= day).at(-1) ?? own[0];
  return Number(last?.per_eur);
}
