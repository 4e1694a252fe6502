import type { Day } from '../evidence/index.ts';
import {
  type BoughtCopy,
  type Charge,
  type EnteredTier,
  type EnteredWant,
  type Parcel,
  type Status,
  TIER_AMOUNTS,
  type Written,
} from '../market/index.ts';
import { lastDay } from './market-rows.ts';
import { type Cell, rowsOf } from './rows-of.ts';
import type { Dossier } from './types.ts';

/** A row of `desk/copies.csv`, as far as deciding goes. */
export interface DeskCopy extends BoughtCopy {
  /** As written: one id, or several with `|`. */
  readonly printing: string;
  readonly status: Status;
  readonly service: string | null;
  readonly grade: string | null;
}

const orNull = (cell: string) => (cell === '' ? null : cell);

/** The copies on the desk; a copy whose status is not entered counts as kept. */
export function deskCopies(dossier: Dossier): DeskCopy[] {
  return rowsOf(dossier, 'desk/copies.csv', (cell) => ({
    id: cell('id'),
    printing: cell('printing'),
    status: (cell('status') || 'kept') as Status,
    parcel: orNull(cell('parcel')),
    bought: lastDay(cell('bought')),
    price: orNull(cell('price')),
    currency: orNull(cell('currency')),
    service: orNull(cell('service')),
    grade: orNull(cell('grade')),
  }));
}

/** The parcels that copies came in. */
export function deskParcels(dossier: Dossier): Parcel[] {
  return rowsOf(dossier, 'desk/parcels.csv', (cell) => ({
    id: cell('id'),
    origin: cell('origin'),
    shippedBy: cell('shipped_by'),
    shipping: orNull(cell('shipping')),
    insurance: orNull(cell('insurance')),
    currency: orNull(cell('currency')),
    taxPaid: orNull(cell('tax_paid')),
    bankRate: orNull(cell('bank_rate')),
  }));
}

/** The owner's charges as `desk/charges.json` has them; entries that are no objects are left out. */
export function deskCharges({ documents }: Dossier, home: string): Charge[] {
  const list = documents.get('desk/charges.json');
  if (!Array.isArray(list)) return [];
  return list.flatMap((entry: unknown): Charge[] => {
    if (typeof entry !== 'object' || entry === null) return [];
    const keys = entry as Readonly<Record<string, unknown>>;
    const number = (key: string) => {
      const value = keys[key];
      return typeof value === 'number' && Number.isFinite(value) ? String(value) : null;
    };
    const text = (key: string) => (typeof keys[key] === 'string' ? (keys[key] as string) : '');
    return [
      {
        origin: text('origin'),
        carrier: text('carrier'),
        validFrom: text('valid_from'),
        dutyRate: number('duty_rate'),
        taxRate: number('tax_rate'),
        taxBase: (text('tax_base') || null) as Charge['taxBase'],
        dutyFreeBelow: number('duty_free_below'),
        taxFreeBelow: number('tax_free_below'),
        currency: text('currency') || home,
        handlingFee: number('handling_fee'),
        paymentFeeRate: number('payment_fee_rate'),
        sellingFeeRate: number('selling_fee_rate'),
        returnShipping: number('return_shipping'),
      },
    ];
  });
}

/** The newest row of each tier that is valid on a day. */
export function deskTiers(dossier: Dossier, on: Day): EnteredTier[] {
  const newest = new Map<string, { readonly from: Day | null; readonly row: EnteredTier }>();
  const read = (cell: Cell) => {
    const from = lastDay(cell('valid_from'));
    const key = JSON.stringify([cell('service'), cell('tier')]);
    const before = newest.get(key);
    if (from !== null && from > on) return;
    if (
      before !== undefined &&
      (before.from ?? Number.NEGATIVE_INFINITY) > (from ?? Number.NEGATIVE_INFINITY)
    )
      return;
    const days = cell('days');
    newest.set(key, {
      from,
      row: {
        service: cell('service'),
        tier: cell('tier'),
        currency: cell('currency'),
        amounts: amountsOf(cell),
        minCopies: Number(cell('min_copies')) || 1,
        days: days === '' ? null : Number(days),
      },
    });
  };
  rowsOf(dossier, 'desk/tiers.csv', read);
  return [...newest.values()].map(({ row }) => row);
}

function amountsOf(cell: Cell): EnteredTier['amounts'] {
  const entries = TIER_AMOUNTS.map((name) => [name, orNull(cell(name))] as const);
  return Object.fromEntries(entries) as EnteredTier['amounts'];
}

/** What is still looked for. */
export function deskWants(dossier: Dossier): EnteredWant[] {
  return rowsOf(dossier, 'desk/wants.csv', (cell) => ({
    printing: cell('printing'),
    service: orNull(cell('service')),
    grade: orNull(cell('grade')),
    maxPrice: orNull(cell('max_price')),
    currency: orNull(cell('currency')),
  }));
}

/** What a seller, venue or carrier last offered to pay back while the copy stays, by copy. */
export function offeredBack(dossier: Dossier): ReadonlyMap<string, Written> {
  const offers = new Map<string, Written>();
  rowsOf(dossier, 'desk/events.csv', (cell) => {
    if (cell('what') !== 'refund offered' || cell('copy') === '' || cell('amount') === '') return;
    offers.set(cell('copy'), { amount: cell('amount'), currency: cell('currency') });
  });
  return offers;
}
