import type { Advised, DecideAnswer, Plans, Wanted, WireLanded } from '../../contract/index.ts';
import { isoOf } from '../../evidence/index.ts';
import {
  type Batches,
  type Clock,
  chanceBelow,
  type Decision,
  type Desk,
  digitsOf,
  type EnteredCopy,
  type HeldCopy,
  type LandedCost,
  type NotLanded,
  type Purchases,
  waysOf,
} from '../../market/index.ts';
import type { Decided, Priced } from './decided.ts';

/** All that was decided, as the page gets it. */
export function answerOnWire({ shown, found }: Priced, decided: Decided): DecideAnswer {
  const { desk, decisions, ground, assumed } = decided;
  return {
    version: shown.version,
    on: isoOf(desk.on),
    currency: desk.home.currency,
    regretLimit: desk.home.regretLimit,
    copies: decisions.map((one, i) =>
      advised(one, ground.copies[i] as HeldCopy, desk.copies[i] as EnteredCopy, ground.prices),
    ),
    wants: wantsOnWire(shown.dossier.tables.get('desk/wants.csv'), decided),
    tiers: desk.tiers.flatMap(({ service, tier, amounts, currency, minCopies, days }) =>
      amounts.fee === null ? [] : [{ service, tier, fee: amounts.fee, currency, minCopies, days }],
    ),
    rates: ratesInUse(desk),
    taxRates: [...new Set(desk.charges.flatMap(({ taxRate }) => taxRate ?? []))].map(Number),
    assumed: [...found.assumed, ...assumed],
  };
}

function advised(
  decision: Decision,
  held: HeldCopy,
  { price, currency }: EnteredCopy,
  prices: Decided['ground']['prices'],
): Advised {
  const { id, status, printings, service, grade, landed, clock } = held;
  const { keep, equalRefund, advice, highestBid, hingesOn, because, submit, options } = decision;
  return {
    ...{ id, status, service, grade, keep, equalRefund, advice, highestBid, hingesOn, because },
    printings: [...printings],
    asked: price === null ? null : { price, currency: currency ?? '' },
    landed: landedOnWire(landed),
    submit: submit && { ...submit },
    ways: waysOf(decision, held, prices).map((way) => ({
      ...way,
      interval80: [...way.interval80] as [number, number],
    })),
    options: options.map((option) => ({
      ...option,
      outcomes: [...option.outcomes],
      ungraded: option.ungraded && { ...option.ungraded },
    })),
    ...clockOnWire(clock),
  };
}

/** A landed cost line by line. */
export function landedOnWire(landed: LandedCost | NotLanded): WireLanded {
  if ('why' in landed) return { why: landed.why };
  return {
    total: digitsOf(landed.total),
    lines: landed.lines.map(({ name, share, parcel, how }) => ({
      ...{ name, how, share: digitsOf(share), parcel: digitsOf(parcel) },
    })),
    assumed: [...landed.assumed],
  };
}

function clockOnWire({ open, unclear }: Clock): Pick<Advised, 'deadlines' | 'unclear'> {
  return {
    deadlines: open.map(({ against, startsFrom, startsOn, days, counts, last, left }) => ({
      ...{ against, startsFrom, startsOn, days, counts, left },
      last: isoOf(last),
    })),
    unclear: unclear.map(({ against, why }) => ({ against, why })),
  };
}

type Table = ReturnType<Priced['shown']['dossier']['tables']['get']>;

function wantsOnWire(table: Table, { wants, ground }: Decided): Wanted[] {
  const rows = table ? [...table.rows()] : [];
  return wants.map(({ printing, service, grade, most }, w) => {
    const price = ground.prices.of
      .get(printing)
      ?.find((one) => one.service === service && one.grade === grade);
    const scatter = service === null ? ground.prices.scatter.raw : ground.prices.scatter.graded;
    const row = rows[w] as number;
    return {
      ...{ row, printing, service, grade, most },
      cells: { ...table?.record(row) },
      price: price
        ? { price: price.price, interval80: [...price.interval80], sales: price.sales }
        : null,
      pUnder: price && most !== null && most > 0 ? chanceBelow(price, scatter, most) : null,
    };
  });
}

/** The rates of currencies that copies, parcels, charges and tiers are in, as of the day. */
function ratesInUse({ copies, parcels, charges, tiers, wants, rates, on }: Desk) {
  const all = [copies, parcels, charges, tiers, wants].flat().map(({ currency }) => currency);
  return [...new Set(all)].sort().flatMap((currency) => {
    const rate = currency ? rates.on(currency, on) : undefined;
    if (!rate || rate.of === null) return [];
    const perEur = Number(rate.perEur.over) / Number(rate.perEur.under);
    return [{ currency: rate.currency, perEur: String(perEur), of: isoOf(rate.of) }];
  });
}

/** Plans as the page gets them. */
export function plansOnWire(
  version: number,
  { batches, purchases }: { readonly batches: Batches; readonly purchases: Purchases },
): Plans {
  return {
    version,
    batches: batches.batches.map((one) => ({ ...one, copies: [...one.copies] })),
    batchesPlan: { gain: batches.gain, cost: batches.cost, atMost: batches.bound },
    bought: [...purchases.bought],
    purchasesPlan: { saved: purchases.saved, cost: purchases.cost, atMost: purchases.bound },
  };
}
