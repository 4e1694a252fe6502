import type { Day } from '../../evidence/index.ts';
import type { Clock } from '../deadlines/deadlines.ts';
import type { LandedCost, NotLanded } from '../landed/types.ts';
import type { Money } from '../money/currencies.ts';
import type { Prices } from '../price/predict.ts';

/** What becomes of a copy that is held or offered. */
export const STATUSES = [
  'offered',
  'bought',
  'arrived',
  'kept',
  'disputed',
  'returned',
  'submitted',
  'sold',
] as const;
/** One of them. */
export type Status = (typeof STATUSES)[number];

/** The chance of each grade of a service, should the copy be submitted; they add up to 1. */
export interface GradeChances {
  readonly service: string;
  /** By grade, in any order. */
  readonly p: Readonly<Record<string, number>>;
  /** The chance that it comes back without a grade; null where the service tells no such entries. */
  readonly ungraded: number | null;
  /** Where they come from. */
  readonly by: 'examination' | 'population';
}

/** A copy that something is to be decided about. */
export interface HeldCopy {
  readonly id: string;
  readonly status: Status;
  /** What it can be, with probabilities that add up to 1. */
  readonly printings: readonly { readonly id: string; readonly p: number }[];
  /** Null where it is raw. */
  readonly service: string | null;
  readonly grade: string | null;
  readonly landed: LandedCost | NotLanded;
  readonly clock: Clock;
  readonly gradeChances: readonly GradeChances[];
  /** What sending it back costs; null where not entered. */
  readonly returnShipping: Money | null;
  /** What the other side offered to pay back while the copy stays; null where nothing was. */
  readonly offeredBack: Money | null;
  /** Share of the price that selling it costs; null where not entered. */
  readonly sellingFeeRate: number | null;
}

/** What a service charges for a way of grading, in the desk's currency. */
export interface Tier {
  readonly service: string;
  readonly tier: string;
  readonly fee: Money;
  /** Open to copies whose expected price once graded is at most this; null without a limit. */
  readonly maxValue: Money | null;
  /** What a copy that turns out dearer costs beside; null where not entered as an amount. */
  readonly upcharge: Money | null;
  /** What a copy costs that comes back without a grade, in place of the fee; null where not entered. */
  readonly ungradedFee: Money | null;
  /** In one batch. */
  readonly minCopies: number;
  /** Back and out, once a batch. */
  readonly postage: Money;
  /** How long it takes; null where not entered. */
  readonly days: number | null;
}

/** What is decided from. */
export interface DecisionGround {
  readonly on: Day;
  readonly currency: string;
  readonly copies: readonly HeldCopy[];
  readonly prices: Pick<Prices, 'of' | 'scatter'>;
  readonly tiers: readonly Tier[];
}

/** A tier that is open to a copy. */
export interface Option {
  readonly service: string;
  readonly tier: string;
  /** Expected price once graded, less the price raw, less the fee; postage not taken off. */
  readonly expectedGain: number;
  /** Each grade with its chance and what the copy may fetch then. */
  readonly outcomes: readonly {
    readonly grade: string;
    readonly p: number;
    readonly price: number;
  }[];
  /** Standard deviation of the gain over grades. */
  readonly spread: number;
  /** The chance that the copy is worth less than if it had stayed raw, fee and postage taken off. */
  readonly pLoss: number;
  /** What upcharges are expected to cost beside; not in the gain. */
  readonly upcharge: number;
  /** That it comes back without a grade, and what is lost then; not in the gain. Null where not known. */
  readonly ungraded: { readonly p: number; readonly cost: number } | null;
  /** The share of a batch's postage, over the fewest copies that a batch may have. */
  readonly postageShare: number;
  readonly days: number | null;
  readonly by: GradeChances['by'];
}

/** A way out of holding a copy. */
export type Advice = 'keep' | 'return' | 'complain' | 'submit';

/** What may be done with a copy, and what is best by expectation. */
export interface Decision {
  readonly copy: string;
  readonly keep: number | null;
  readonly return: number | null;
  readonly complain: number | null;
  /** What is left of its price when it is sold as it is. */
  readonly sell: number | null;
  /** What must be paid back so that keeping equals returning; null where returning is shut. */
  readonly equalRefund: number | null;
  readonly submit: {
    readonly service: string;
    readonly tier: string;
    readonly expectedGain: number;
  } | null;
  readonly options: readonly Option[];
  /** Null for a copy that is not held. */
  readonly advice: Advice | null;
  /** In the desk's currency, the price alone; null for a copy that is not offered. */
  readonly highestBid: number | null;
  readonly hingesOn: string;
  readonly because: string;
}
