import type { DecisionGround, GradeChances } from '../decide/types.ts';
import { expectedPrice } from '../decide/worth.ts';
import { exactOf } from '../money/exact.ts';
import type { Rates } from '../money/rates.ts';
import type { Price } from '../price/types.ts';
import type { Desk, EnteredCopy, EnteredTier } from './types.ts';

/** What is supposed in the place of what the desk says; nothing of it is written. */
export interface Supposed {
  /** Fees in the currency of their tier. */
  readonly fees: readonly {
    readonly service: string;
    readonly tier: string;
    readonly fee: string;
  }[];
  /** The chance of a grade; the other grades keep their shares among themselves. */
  readonly grades: readonly {
    readonly copy: string;
    readonly service: string;
    readonly grade: string;
    readonly p: number;
  }[];
  /** Units for one euro from the day of the desk on; what was bought before keeps its own rate. */
  readonly rates: readonly { readonly currency: string; readonly perEur: string }[];
  /** What a copy is expected to fetch; all copies of its printings follow. */
  readonly prices: readonly {
    readonly copy: string;
    readonly service: string | null;
    readonly grade: string | null;
    readonly price: number;
  }[];
  /** What is asked for a copy, in the currency in which it is offered. */
  readonly asked: readonly { readonly copy: string; readonly price: string }[];
  /** Share of tax in the place of every entry's; null as entered. */
  readonly taxRate: number | null;
}

/** The desk and the prices as they would be. */
export function supposing(
  desk: Desk,
  prices: DecisionGround['prices'],
  what: Supposed,
): { readonly desk: Desk; readonly prices: DecisionGround['prices'] } {
  const taxRate = what.taxRate === null ? null : String(what.taxRate);
  return {
    desk: {
      ...desk,
      rates: ratesFrom(desk, what.rates),
      copies: desk.copies.map((copy) => copyWith(copy, what)),
      tiers: desk.tiers.map((tier) => tierWith(tier, what.fees)),
      charges:
        taxRate === null ? desk.charges : desk.charges.map((charge) => ({ ...charge, taxRate })),
    },
    prices: what.prices.reduce((before, one) => pricesWith(before, desk, one), prices),
  };
}

function ratesFrom({ rates, on }: Desk, supposed: Supposed['rates']): Rates {
  const of = new Map(supposed.map(({ currency, perEur }) => [currency, exactOf(perEur)]));
  return {
    on: (currency, day) => {
      const perEur = of.get(currency);
      const isNew = perEur !== undefined && (day === null || day >= on);
      return isNew ? { currency, perEur, of: on, how: 'of the day' } : rates.on(currency, day);
    },
  };
}

function copyWith(copy: EnteredCopy, { asked, grades }: Supposed): EnteredCopy {
  const price = asked.find((one) => one.copy === copy.id)?.price ?? copy.price;
  const gradeChances = grades
    .filter((one) => one.copy === copy.id)
    .reduce((all, one) => all.map((chances) => chancesWith(chances, one)), copy.gradeChances);
  return { ...copy, price, gradeChances };
}

function chancesWith(chances: GradeChances, one: Supposed['grades'][number]): GradeChances {
  const { service, grade, p } = one;
  const was = chances.p[grade];
  if (chances.service !== service || was === undefined) return chances;
  const others = Object.keys(chances.p).length - 1;
  const share = (other: number) => (was < 1 ? (other * (1 - p)) / (1 - was) : (1 - p) / others);
  const entries = Object.entries(chances.p).map(([name, other]): [string, number] => [
    name,
    name === grade ? p : share(other),
  ]);
  return { ...chances, p: Object.fromEntries(entries) };
}

function tierWith(tier: EnteredTier, fees: Supposed['fees']): EnteredTier {
  const fee = fees.find((one) => one.service === tier.service && one.tier === tier.tier)?.fee;
  return fee === undefined ? tier : { ...tier, amounts: { ...tier.amounts, fee } };
}

function pricesWith(
  prices: DecisionGround['prices'],
  { copies }: Desk,
  { copy: id, service, grade, price }: Supposed['prices'][number],
): DecisionGround['prices'] {
  const among = copies.find((copy) => copy.id === id)?.printings ?? [];
  const was = expectedPrice(prices, among, service, grade);
  if (was === undefined) return prices;
  const isCell = (one: Price) => one.service === service && one.grade === grade;
  const of = new Map(prices.of);
  for (const printing of among) {
    const own = of.get(printing.id) ?? [];
    of.set(
      printing.id,
      own.map((one) => (isCell(one) ? timesAs(one, price / was) : one)),
    );
  }
  return { ...prices, of };
}

/** A price so many times as high, as surely known. */
function timesAs(one: Price, times: number): Price {
  const [low, high] = one.interval80;
  return {
    ...one,
    price: one.price * times,
    interval80: [low * times, high * times],
    level: { ...one.level, log: one.level.log + Math.log(times) },
  };
}
