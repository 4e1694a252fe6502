import type { Day } from '../../evidence/index.ts';
import type { Currency, Money } from '../money/currencies.ts';

/** A copy as far as its cost goes. Amounts are decimal numbers as written; null where not known. */
export interface BoughtCopy {
  readonly id: string;
  /** Null where it came, or would come, by itself. */
  readonly parcel: string | null;
  readonly bought: Day | null;
  readonly price: string | null;
  readonly currency: Currency | null;
}

/** A parcel as far as its cost goes. */
export interface Parcel {
  readonly id: string;
  /** Where it comes from; empty where not known, which counts as abroad. */
  readonly origin: string;
  readonly shippedBy: string;
  readonly shipping: string | null;
  readonly insurance: string | null;
  readonly currency: Currency | null;
  /** Tax as billed, in the currency of the desk; takes the place of its estimate. */
  readonly taxPaid: string | null;
  /** Units of the parcel's currency for one of the desk's, as the bank took them. */
  readonly bankRate: string | null;
}

/** What the owner entered for a way of sending. Nothing is assumed where an entry is missing. */
export interface Charge {
  /** Empty fits every origin. */
  readonly origin: string;
  /** Empty fits every carrier. */
  readonly carrier: string;
  readonly validFrom: string;
  readonly dutyRate: string | null;
  readonly taxRate: string | null;
  readonly taxBase: 'goods' | 'goods+shipping' | 'goods+shipping+duty' | null;
  readonly dutyFreeBelow: string | null;
  readonly taxFreeBelow: string | null;
  readonly currency: Currency;
  readonly handlingFee: string | null;
  readonly paymentFeeRate: string | null;
  readonly sellingFeeRate: string | null;
  readonly returnShipping: string | null;
}

/** What a line of a landed cost is for. */
export type LineName =
  | 'price'
  | 'shipping'
  | 'insurance'
  | 'duty'
  | 'tax'
  | 'handling'
  | 'payment fee';

/** One line of a landed cost, in the desk's currency. */
export interface CostLine {
  readonly name: LineName;
  /** Of the whole parcel. */
  readonly parcel: Money;
  /** Of this copy: its own price, else its share of the parcel's line. */
  readonly share: Money;
  /** How it came about, in words. */
  readonly how: string;
}

/** What a copy costs until it lies on the desk. */
export interface LandedCost {
  readonly copy: string;
  /** The sum of the lines' shares. */
  readonly total: Money;
  readonly lines: readonly CostLine[];
  /** What was taken for granted, in words. */
  readonly assumed: readonly string[];
}

/** A copy whose landed cost cannot be told. */
export interface NotLanded {
  readonly copy: string;
  readonly why: string;
}
