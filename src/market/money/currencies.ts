import { dividedBy, type Exact, exactOf, roundedAway, times } from './exact.ts';

/** A code of ISO 4217, such as `EUR`. */
export type Currency = string;

/** An amount in the smallest unit of one currency (cents of the euro, whole yen). */
export interface Money {
  /** A whole number. */
  readonly minor: number;
  readonly currency: Currency;
}

/**
 * Currencies whose smallest unit is not a hundredth, by the list of ISO 4217 (`iso:4217`; written
 * from memory, those of the checked table agree). `Intl` differs, since it tells what is in use.
 */
const DECIMALS: ReadonlyMap<Currency, number> = new Map(
  Object.entries({
    0: 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF',
    3: 'BHD IQD JOD KWD LYD OMR TND',
    4: 'CLF UYW',
  }).flatMap(([decimals, codes]) => codes.split(' ').map((code) => [code, Number(decimals)])),
);

/** How many decimals ISO 4217 gives a currency. */
export function decimalsOf(currency: Currency): number {
  return DECIMALS.get(currency) ?? 2;
}

/** How many of its smallest units one unit of a currency has. */
export function unitsIn(currency: Currency): number {
  return 10 ** decimalsOf(currency);
}

/**
 * An exact amount in whole units of a currency, rounded to its smallest unit, halves away from zero.
 *
 * @throws {RangeError} beyond 2^53 smallest units
 */
export function moneyOf(amount: Exact, currency: Currency): Money {
  const minor = Number(roundedAway(times(amount, exactOf(unitsIn(currency)))));
  if (!Number.isSafeInteger(minor)) throw new RangeError(`${minor} is more than money is kept for`);
  return { minor, currency };
}

/** The exact amount in whole units of its currency. */
export function amountOf({ minor, currency }: Money): Exact {
  return dividedBy(exactOf(minor), exactOf(unitsIn(currency)));
}

/** The digits of an amount with the decimals of ISO 4217, without the currency: `12.50`. */
export function digitsOf({ minor, currency }: Money): string {
  const decimals = decimalsOf(currency);
  const digits = String(Math.abs(minor)).padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  const sign = minor < 0 ? '-' : '';
  return decimals === 0 ? sign + whole : `${sign}${whole}.${digits.slice(-decimals)}`;
}

/**
 * The sum of amounts in one currency.
 *
 * @throws {RangeError} where one is in another currency
 */
export function sumOf(amounts: readonly Money[], currency: Currency): Money {
  let minor = 0;
  for (const amount of amounts) {
    if (amount.currency !== currency)
      throw new RangeError(`${amount.currency} and ${currency} cannot be added`);
    minor += amount.minor;
  }
  return { minor, currency };
}
