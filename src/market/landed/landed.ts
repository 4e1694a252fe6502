import type { Day } from '../../evidence/index.ts';
import { type Currency, moneyOf, sumOf } from '../money/currencies.ts';
import { exactOf } from '../money/exact.ts';
import type { Rates } from '../money/rates.ts';
import { sharedOut } from '../money/shares.ts';
import { chargeFor } from './charges.ts';
import { dueLines, type ParcelLine } from './due.ts';
import { type InDeskMoney, type ToDesk, toDeskBy } from './exchange.ts';
import { termsOf } from './terms.ts';
import type { BoughtCopy, Charge, LandedCost, NotLanded, Parcel } from './types.ts';

/** What landed costs rest on beside copies and parcels. */
export interface LandedGround {
  readonly home: { readonly currency: Currency; readonly country: string };
  readonly charges: readonly Charge[];
  readonly rates: Rates;
}

const ALONE: Parcel = {
  id: '',
  origin: '',
  shippedBy: '',
  shipping: null,
  insurance: null,
  currency: null,
  taxPaid: null,
  bankRate: null,
};

/**
 * What copies cost until they lie on the desk, a parcel at a time, line by line: each line is
 * rounded to the smallest unit of the desk's currency, halves away from zero, and shared among the
 * parcel's copies by price. Duty, tax and fees are the owner's entries; customs and tax advisers
 * decide. Misleads where a parcel holds things that are not in `copies`, since goods count as the
 * sum of the copies' prices.
 */
export function landedCosts(
  copies: readonly BoughtCopy[],
  parcels: readonly Parcel[],
  ground: LandedGround,
): (LandedCost | NotLanded)[] {
  const byId = new Map(parcels.map((parcel) => [parcel.id, parcel]));
  const groups = new Map<string, BoughtCopy[]>();
  for (const copy of copies) {
    const key = copy.parcel ?? `alone ${copy.id}`;
    groups.set(key, [...(groups.get(key) ?? []), copy]);
  }
  const costs = new Map<string, LandedCost | NotLanded>();
  for (const [key, group] of groups)
    for (const cost of costsOf(group, byId.get(key) ?? ALONE, ground)) costs.set(cost.copy, cost);
  return copies.map(({ id }) => costs.get(id) as LandedCost | NotLanded);
}

interface Priced {
  readonly copy: BoughtCopy;
  readonly price: InDeskMoney;
}

function costsOf(
  copies: readonly BoughtCopy[],
  parcel: Parcel,
  ground: LandedGround,
): (LandedCost | NotLanded)[] {
  const toDesk = toDeskBy(ground.rates, ground.home.currency, parcel);
  const priced: Priced[] = [];
  const not: NotLanded[] = [];
  for (const copy of copies) {
    const price =
      copy.price === null
        ? { why: 'its price is not entered' }
        : toDesk(copy.price, copy.currency, copy.bought);
    if ('why' in price) not.push({ copy: copy.id, why: price.why });
    else priced.push({ copy, price });
  }
  if (priced.length === 0) return not;
  const left = not.map(({ copy, why }) => `${copy} is left out of the parcel’s goods: ${why}`);
  const found = linesOf(priced, parcel, ground, toDesk);
  if ('why' in found) return copies.map(({ id }) => ({ copy: id, why: found.why }));
  return [...shared(priced, found.lines, [...left, ...found.assumed]), ...not];
}

function shared(
  priced: readonly Priced[],
  lines: readonly ParcelLine[],
  assumed: readonly string[],
): LandedCost[] {
  const weights = priced.map(({ price }) => price.money.minor);
  const currency = (priced[0] as Priced).price.money.currency;
  const goods = sumOf(
    priced.map(({ price }) => price.money),
    currency,
  );
  const parts = lines.map(({ money }) => sharedOut(money.minor, weights));
  return priced.map(({ copy, price }, at) => {
    const own = lines.map(({ name, money, how }, line) => ({
      name,
      parcel: money,
      share: { minor: parts[line]?.[at] as number, currency },
      how,
    }));
    const all = [
      { name: 'price' as const, parcel: goods, share: price.money, how: price.how },
      ...own,
    ];
    const total = sumOf(
      all.map(({ share }) => share),
      currency,
    );
    return { copy: copy.id, total, lines: all, assumed };
  });
}

function linesOf(
  priced: readonly Priced[],
  parcel: Parcel,
  { home, charges, rates }: LandedGround,
  toDesk: ToDesk,
):
  | { readonly lines: readonly ParcelLine[]; readonly assumed: readonly string[] }
  | { readonly why: string } {
  const days = priced.flatMap(({ copy }) => copy.bought ?? []);
  const day = days.length === 0 ? null : (Math.min(...days) as Day);
  const assumed: string[] = [];
  const carried: ParcelLine[] = [];
  for (const name of ['shipping', 'insurance'] as const) {
    const amount = parcel[name];
    if (amount === null) {
      assumed.push(`${name} is not entered, counted as nothing`);
      continue;
    }
    const desk = toDesk(amount, parcel.currency, day);
    if ('why' in desk) return { why: `its parcel’s ${name}: ${desk.why}` };
    carried.push({ name, money: desk.money, how: desk.how });
  }
  const taxPaid = parcel.taxPaid === null ? null : moneyOf(exactOf(parcel.taxPaid), home.currency);
  const charge = chargeFor(charges, parcel);
  if (charge === undefined) {
    assumed.push(
      `no entry of desk/charges.json fits ${placeOf(parcel)}: no duty, handling or payment fee, and no tax but what was billed`,
    );
    const tax: ParcelLine[] = taxPaid ? [{ name: 'tax', money: taxPaid, how: 'as billed' }] : [];
    return { lines: [...carried, ...tax], assumed };
  }
  const terms = termsOf(charge, toDeskBy(rates, home.currency, ALONE), day);
  if ('why' in terms) return { why: `the entry for ${placeOf(parcel)}: ${terms.why}` };
  const abroad = parcel.origin === '' || parcel.origin !== home.country;
  if (parcel.origin === '') assumed.push('where it comes from is not entered: it counts as abroad');
  const goods = sumOf(
    priced.map(({ price }) => price.money),
    home.currency,
  );
  const carriedSum = sumOf(
    carried.map(({ money }) => money),
    home.currency,
  );
  return {
    lines: [...carried, ...dueLines(goods, carriedSum, terms, abroad, taxPaid)],
    assumed: [...assumed, ...terms.assumed],
  };
}

function placeOf({ origin, shippedBy }: Parcel): string {
  const by = shippedBy === '' ? '' : ` by ${shippedBy}`;
  return `a parcel from ${origin === '' ? 'a place not entered' : origin}${by}`;
}
