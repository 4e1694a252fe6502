import { highestBid } from '../decide/bid.ts';
import type { Offer, Want } from '../decide/purchases.ts';
import type { DecisionGround, HeldCopy, Tier } from '../decide/types.ts';
import { chargeFor } from '../landed/charges.ts';
import { deskMoney } from '../landed/exchange.ts';
import { landedCosts } from '../landed/landed.ts';
import type { LandedCost, NotLanded } from '../landed/types.ts';
import { type Money, unitsIn } from '../money/currencies.ts';
import type { Desk, EnteredCopy, EnteredTier, TIER_AMOUNTS } from './types.ts';

/** Everything that is decided from, with what was taken for granted or could not be used. */
export interface DeskDecisions {
  readonly ground: DecisionGround;
  /** The highest bid for each offered copy, in whole units of the desk's currency. */
  readonly bids: ReadonlyMap<string, number>;
  readonly wants: readonly Want[];
  readonly offers: readonly Offer[];
  readonly assumed: readonly string[];
}

type ToDesk = (amount: string | null, currency: string | null, what: string) => Money | null;

/** What is decided from on a desk, once prices are known: all amounts in the desk's currency. */
export function decisionsOn(desk: Desk, prices: DecisionGround['prices']): DeskDecisions {
  const { on, home, rates } = desk;
  const assumed: string[] = [];
  const toDesk: ToDesk = (amount, currency, what) => {
    if (amount === null) return null;
    const changed = deskMoney(rates, home.currency, amount, currency, on);
    if ('minor' in changed) return changed;
    assumed.push(`${what} cannot be used: ${changed.why}`);
    return null;
  };
  const copies = heldCopies(desk, toDesk);
  const tiers = desk.tiers.flatMap((tier) => tierOf(tier, toDesk, home.currency, assumed));
  if (home.regretLimit === null && copies.some(({ status }) => status === 'offered'))
    assumed.push('desk/desk.json has no regret_limit between 0 and 1: no bid is told');
  return {
    ground: { on, currency: home.currency, copies, prices, tiers },
    bids: bidsOn(copies, desk, prices),
    wants: wantsOn(desk, toDesk),
    offers: offersAmong(copies, unitsIn(home.currency)),
    assumed: [...new Set(assumed)],
  };
}

function heldCopies(desk: Desk, toDesk: ToDesk): HeldCopy[] {
  const landed = landedCosts(desk.copies, desk.parcels, desk);
  return desk.copies.map((copy, i) => {
    const parcel = desk.parcels.find(({ id }) => id === copy.parcel);
    const charge = chargeFor(desk.charges, parcel ?? { origin: '', shippedBy: '' });
    const { id, status, printings, service, grade, clock, gradeChances, offeredBack } = copy;
    return {
      ...{ id, status, printings, service, grade, clock, gradeChances },
      landed: landed[i] as LandedCost | NotLanded,
      returnShipping: toDesk(
        charge?.returnShipping ?? null,
        charge?.currency ?? null,
        'what a return costs',
      ),
      offeredBack: toDesk(
        offeredBack?.amount ?? null,
        offeredBack?.currency ?? null,
        `what was offered back for ${id}`,
      ),
      sellingFeeRate: charge?.sellingFeeRate == null ? null : Number(charge.sellingFeeRate),
    };
  });
}

/** The highest bid for each offered copy, the rest of its parcel as it stands; none without a limit. */
function bidsOn(
  copies: readonly HeldCopy[],
  desk: Desk,
  prices: DecisionGround['prices'],
): ReadonlyMap<string, number> {
  const { currency, regretLimit } = desk.home;
  const unit = unitsIn(currency);
  const bids = new Map<string, number>();
  if (regretLimit === null) return bids;
  for (const [i, copy] of copies.entries()) {
    if (copy.status !== 'offered') continue;
    const landedAt = landedAtPrice(desk, desk.copies[i] as EnteredCopy, unit);
    const bid = highestBid(copy, prices, regretLimit, landedAt, unit);
    if (bid !== undefined) bids.set(copy.id, bid / unit);
  }
  return bids;
}

function landedAtPrice(
  desk: Desk,
  row: EnteredCopy,
  unit: number,
): (minor: number) => number | undefined {
  const { currency } = desk.home;
  const beside = desk.copies.filter(
    (one) => one !== row && one.parcel !== null && one.parcel === row.parcel,
  );
  return (minor) => {
    const bid = { ...row, price: (minor / unit).toFixed(4), currency };
    const [cost] = landedCosts([bid, ...beside], desk.parcels, desk);
    return cost === undefined || 'why' in cost ? undefined : cost.total.minor;
  };
}

function tierOf(tier: EnteredTier, toDesk: ToDesk, home: string, assumed: string[]): Tier[] {
  const what = `${tier.service} (${tier.tier})`;
  const { amounts } = tier;
  const money = (column: (typeof TIER_AMOUNTS)[number]) =>
    toDesk(amounts[column], tier.currency || null, `${column} of ${what}`);
  const fee = money('fee');
  if (fee === null) {
    assumed.push(`${what} is left out: its fee is not known`);
    return [];
  }
  const nothing: Money = { minor: 0, currency: home };
  const [out, back] = [money('outward_shipping') ?? nothing, money('return_shipping') ?? nothing];
  const isAmount = amounts.upcharge !== null && /^\d+(\.\d+)?$/.test(amounts.upcharge);
  return [
    {
      service: tier.service,
      tier: tier.tier,
      fee,
      maxValue: money('max_value'),
      upcharge: isAmount ? money('upcharge') : null,
      ungradedFee: money('ungraded_fee'),
      minCopies: tier.minCopies,
      postage: { minor: out.minor + back.minor, currency: home },
      days: tier.days,
    },
  ];
}

function wantsOn({ wants, home }: Desk, toDesk: ToDesk): Want[] {
  return wants.map(({ printing, service, grade, maxPrice, currency }) => {
    const most = toDesk(maxPrice, currency, `the most for ${printing}`);
    return { printing, service, grade, most: most && most.minor / unitsIn(home.currency) };
  });
}

function offersAmong(copies: readonly HeldCopy[], unit: number): Offer[] {
  return copies.flatMap(({ id, status, landed, printings, service, grade }) =>
    status !== 'offered' || 'why' in landed
      ? []
      : [{ copy: id, printings, service, grade, cost: landed.total.minor / unit }],
  );
}
