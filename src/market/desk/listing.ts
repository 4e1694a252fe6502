import type { DecisionGround, HeldCopy } from '../decide/types.ts';
import { chanceUnder, expectedPrice, lowPrice } from '../decide/worth.ts';
import type { LandedCost, NotLanded } from '../landed/types.ts';
import { unitsIn } from '../money/currencies.ts';
import { decisionsOn } from './decisions.ts';
import type { Desk, EnteredCopy } from './types.ts';

/** A copy that is offered and not on the desk yet. Amounts as written. */
export interface Listing {
  readonly price: string;
  readonly currency: string;
  /** Where it would come from; empty where not known, which counts as abroad. */
  readonly origin: string;
  readonly shippedBy: string;
  readonly shipping: string | null;
  readonly service: string | null;
  readonly grade: string | null;
  /** The printings that it may be, with probabilities that add up to 1. */
  readonly printings: HeldCopy['printings'];
  /** The chance that it is a known counterfeit or alteration, which is taken to be worth nothing. */
  readonly pFalse: number;
}

/** What a listing comes to, in the desk's currency; null where something needed is not known. */
export interface Weighed {
  readonly landed: LandedCost | NotLanded;
  /** What it may fetch, should it be one of the printings. */
  readonly expected: number | null;
  readonly interval80: readonly [number, number] | null;
  /** The price alone, 0 where no bid is low enough. */
  readonly highestBid: number | null;
  /** The chance that it is worth less than it costs landed at the price asked. */
  readonly pRegret: number | null;
  readonly assumed: readonly string[];
}

/** The id that a listing has for as long as it is weighed. */
const ID = 'this listing';

/**
 * What a listing would cost landed, may fetch, and how high a bid may be: the chance that it is worth
 * less than it costs, false copies counted as worth nothing, stays at or under the owner's limit.
 * Misleads where the words of a listing are untrue in a way that no reading tells.
 */
export function weighListing(
  desk: Desk,
  prices: DecisionGround['prices'],
  listing: Listing,
): Weighed {
  const { printings, service, grade, pFalse } = listing;
  const limit = desk.home.regretLimit;
  // Of the true copies alone, so that false and poor ones together stay at the limit.
  const regretLimit = limit === null || limit <= pFalse ? null : (limit - pFalse) / (1 - pFalse);
  const only = deskOf({ ...desk, home: { ...desk.home, regretLimit } }, listing);
  const { ground, bids, assumed } = decisionsOn(only, prices);
  const landed = ground.copies[0]?.landed ?? { copy: ID, why: 'nothing is entered' };
  const [low, high] = [0.1, 0.9].map((chance) =>
    lowPrice(prices, printings, service, grade, chance),
  );
  const cost = 'why' in landed ? 0 : landed.total.minor / unitsIn(desk.home.currency);
  const under = cost > 0 ? chanceUnder(prices, printings, service, grade, cost) : undefined;
  return {
    landed,
    expected: expectedPrice(prices, printings, service, grade) ?? null,
    interval80: low === undefined || high === undefined ? null : [low, high],
    highestBid: limit !== null && limit <= pFalse ? 0 : (bids.get(ID) ?? null),
    pRegret: under === undefined ? null : pFalse + (1 - pFalse) * under,
    assumed: limit === null ? assumed : assumed.filter((one) => !one.includes('regret_limit')),
  };
}

/** A desk with nothing on it but the listing, in a parcel of its own. */
function deskOf(desk: Desk, listing: Listing): Desk {
  const { price, currency, origin, shippedBy, shipping, service, grade, printings } = listing;
  const copy: EnteredCopy = {
    ...{ id: ID, parcel: ID, status: 'offered', bought: null, price, currency },
    ...{ service, grade, printings, gradeChances: [], offeredBack: null },
    clock: { open: [], unclear: [] },
  };
  const parcel = {
    ...{ id: ID, origin, shippedBy, shipping, currency },
    ...{ insurance: null, taxPaid: null, bankRate: null },
  };
  return { ...desk, copies: [copy], parcels: [parcel], tiers: [], wants: [] };
}
