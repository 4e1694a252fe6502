import type { Day } from '../../evidence/index.ts';
import type { Clock } from '../deadlines/deadlines.ts';
import type { GradeChances, HeldCopy, Status } from '../decide/types.ts';
import type { BoughtCopy, Charge, Parcel } from '../landed/types.ts';
import type { Currency } from '../money/currencies.ts';
import type { Rates } from '../money/rates.ts';

/** Where the collector lives and reckons. */
export interface Home {
  /** The euro where `desk/desk.json` names no currency. */
  readonly currency: Currency;
  /** Empty where not entered. */
  readonly country: string;
  /** The chance of regret that a bid may have; null where not entered. */
  readonly regretLimit: number | null;
}

/** An amount as its owner wrote it. */
export interface Written {
  readonly amount: string;
  readonly currency: Currency;
}

/** A copy as its owner entered it, with what else is known of it. */
export interface EnteredCopy extends BoughtCopy {
  readonly status: Status;
  readonly printings: HeldCopy['printings'];
  readonly service: string | null;
  readonly grade: string | null;
  readonly clock: Clock;
  readonly gradeChances: readonly GradeChances[];
  /** What the other side last offered to pay back while the copy stays. */
  readonly offeredBack: Written | null;
}

/** Columns of a tier that hold amounts. */
export const TIER_AMOUNTS = [
  'fee',
  'max_value',
  'upcharge',
  'return_shipping',
  'outward_shipping',
  'ungraded_fee',
] as const;

/** What a service charges for a way of grading, as its owner entered it. */
export interface EnteredTier {
  readonly service: string;
  readonly tier: string;
  readonly currency: Currency;
  readonly amounts: Readonly<Record<(typeof TIER_AMOUNTS)[number], string | null>>;
  readonly minCopies: number;
  readonly days: number | null;
}

/** What is still looked for, as its owner entered it. */
export interface EnteredWant {
  readonly printing: string;
  readonly service: string | null;
  readonly grade: string | null;
  readonly maxPrice: string | null;
  readonly currency: Currency | null;
}

/** The collector's desk on a day: all that its owner entered, amounts as written. */
export interface Desk {
  readonly on: Day;
  readonly home: Home;
  readonly rates: Rates;
  readonly copies: readonly EnteredCopy[];
  readonly parcels: readonly Parcel[];
  readonly charges: readonly Charge[];
  readonly tiers: readonly EnteredTier[];
  readonly wants: readonly EnteredWant[];
}
