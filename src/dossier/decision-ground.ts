import { identify } from '../catalogue/index.ts';
import { type Day, isoOf } from '../evidence/index.ts';
import {
  chargeFor,
  clockOf,
  type DecisionGround,
  deskMoney,
  type HeldCopy,
  highestBid,
  type LandedCost,
  type LandedGround,
  landedCosts,
  type Money,
  type NotLanded,
  type Offer,
  type PricedService,
  type Prices,
  type Tier,
  unitsIn,
  type Want,
} from '../market/index.ts';
import { deadlinesOf } from './desk.ts';
import {
  type DeskCopy,
  deskCharges,
  deskCopies,
  deskParcels,
  deskTiers,
  deskWants,
  offeredBack,
  type TierRow,
} from './desk-rows.ts';
import { gradeChancesIn } from './grade-chances.ts';
import { knownOf, readerOf, seenOf } from './identification.ts';
import type { DossierPrices } from './price-ground.ts';
import { standingOf } from './standing.ts';
import type { Dossier } from './types.ts';

/** Everything that is decided from, with what was taken for granted or could not be used. */
export interface DossierDecisions {
  readonly ground: DecisionGround;
  /** The highest bid for each offered copy, in whole units of the desk's currency. */
  readonly bids: ReadonlyMap<string, number>;
  readonly wants: readonly Want[];
  readonly offers: readonly Offer[];
  readonly assumed: readonly string[];
}

/** What is decided from in a dossier, once prices are known. */
export function decisionsIn(
  dossier: Dossier,
  { ground: { services, on }, home, rates }: DossierPrices,
  prices: Prices,
): DossierDecisions {
  const assumed: string[] = [];
  const toDesk = (amount: string | null, currency: string | null, what: string): Money | null => {
    if (amount === null) return null;
    const changed = deskMoney(rates, home.currency, amount, currency, on);
    if ('minor' in changed) return changed;
    assumed.push(`${what} cannot be used: ${changed.why}`);
    return null;
  };
  const desk = deskOf(dossier, home.currency);
  const copies = heldCopies(
    dossier,
    desk,
    { services, on, landed: { home, charges: desk.charges, rates } },
    toDesk,
  );
  const tiers = deskTiers(dossier, on).flatMap((row) =>
    tierOf(row, toDesk, home.currency, assumed),
  );
  const bids =
    home.regretLimit === null
      ? new Map<string, number>()
      : bidsOn(copies, desk, { home, charges: desk.charges, rates }, prices, home.regretLimit);
  if (home.regretLimit === null && copies.some(({ status }) => status === 'offered'))
    assumed.push('desk/desk.json has no regret_limit between 0 and 1: no bid is told');
  return {
    ground: { on, currency: home.currency, copies, prices, tiers },
    bids,
    ...wantsAndOffers(dossier, copies, toDesk, unitsIn(home.currency)),
    assumed: [...new Set(assumed)],
  };
}

type ToDesk = (amount: string | null, currency: string | null, what: string) => Money | null;

type Desk = ReturnType<typeof deskOf>;

function deskOf(dossier: Dossier, home: string) {
  return {
    copies: deskCopies(dossier),
    parcels: deskParcels(dossier),
    deadlines: deadlinesOf(dossier),
    charges: deskCharges(dossier, home),
  };
}

function heldCopies(
  dossier: Dossier,
  desk: Desk,
  about: {
    readonly services: readonly PricedService[];
    readonly on: Day;
    readonly landed: LandedGround;
  },
  toDesk: ToDesk,
): HeldCopy[] {
  const landed = landedCosts(desk.copies, desk.parcels, about.landed);
  const chances = gradeChancesIn(dossier, about.services, about.on);
  const offered = offeredBack(dossier);
  const among = printingsAmong(dossier, about.on);
  return desk.copies.map((copy, i) => {
    const parcel = desk.parcels.find(({ id }) => id === copy.parcel);
    const charge = chargeFor(desk.charges, parcel ?? { origin: '', shippedBy: '' });
    const back = offered.get(copy.id);
    const printings = among(copy);
    const clock = { id: copy.id, parcel: copy.parcel ?? '' };
    return {
      id: copy.id,
      status: copy.status,
      printings,
      service: copy.service,
      grade: copy.grade,
      landed: landed[i] as LandedCost | NotLanded,
      clock: clockOf(desk.deadlines, clock, about.on),
      gradeChances: chances(copy.id, printings),
      returnShipping: toDesk(
        charge?.returnShipping ?? null,
        charge?.currency ?? null,
        'what a return costs',
      ),
      offeredBack: toDesk(
        back?.amount ?? null,
        back?.currency ?? null,
        `what was offered back for ${copy.id}`,
      ),
      sellingFeeRate: charge?.sellingFeeRate == null ? null : Number(charge.sellingFeeRate),
    };
  });
}

/** The highest bid for each offered copy, in whole units, the rest of its parcel as it stands. */
function bidsOn(
  copies: readonly HeldCopy[],
  desk: Desk,
  ground: LandedGround,
  prices: Prices,
  regretLimit: number,
): ReadonlyMap<string, number> {
  const { currency } = ground.home;
  const unit = unitsIn(currency);
  const bids = new Map<string, number>();
  for (const [i, copy] of copies.entries()) {
    const row = desk.copies[i] as DeskCopy;
    if (copy.status !== 'offered') continue;
    const beside = desk.copies.filter(
      (one) => one !== row && one.parcel !== null && one.parcel === row.parcel,
    );
    const landedAt = (minor: number) => {
      const bid = { ...row, price: (minor / unit).toFixed(4), currency };
      const [cost] = landedCosts([bid, ...beside], desk.parcels, ground);
      return cost === undefined || 'why' in cost ? undefined : cost.total.minor;
    };
    const bid = highestBid(copy, prices, regretLimit, landedAt, unit);
    if (bid !== undefined) bids.set(copy.id, bid / unit);
  }
  return bids;
}

/** What a copy may be: its printing, or several by what was seen on it. */
function printingsAmong(dossier: Dossier, on: Day): (copy: DeskCopy) => HeldCopy['printings'] {
  const stands = standingOf(dossier);
  return (copy) => {
    const ids = stands(copy.printing);
    if (ids.length < 2) return ids.map((id) => ({ id, p: 1 }));
    const ground = knownOf(dossier, isoOf(on), copy.service !== null);
    const seen = seenOf(dossier, copy.id, readerOf(dossier, ground));
    const { candidates } = identify(ground, seen);
    const p = (id: string) =>
      candidates.find((one) => one.kind === 'printing' && one.id === id)?.p ?? 0;
    const sum = ids.reduce((total, id) => total + p(id), 0);
    return ids.map((id) => ({ id, p: sum > 0 ? p(id) / sum : 1 / ids.length }));
  };
}

function tierOf(row: TierRow, toDesk: ToDesk, home: string, assumed: string[]): Tier[] {
  const what = `${row.service} (${row.tier})`;
  const money = (column: string) =>
    toDesk(row.amount(column), row.currency || null, `${column} of ${what}`);
  const fee = money('fee');
  if (fee === null) {
    assumed.push(`${what} is left out: its fee is not known`);
    return [];
  }
  const nothing: Money = { minor: 0, currency: home };
  const [out, back] = [money('outward_shipping') ?? nothing, money('return_shipping') ?? nothing];
  const upcharge = row.amount('upcharge');
  const isAmount = upcharge !== null && /^\d+(\.\d+)?$/.test(upcharge);
  return [
    {
      service: row.service,
      tier: row.tier,
      fee,
      maxValue: money('max_value'),
      upcharge: isAmount ? money('upcharge') : null,
      ungradedFee: money('ungraded_fee'),
      minCopies: row.minCopies,
      postage: { minor: out.minor + back.minor, currency: home },
      days: row.days,
    },
  ];
}

function wantsAndOffers(
  dossier: Dossier,
  copies: readonly HeldCopy[],
  toDesk: ToDesk,
  unit: number,
): { readonly wants: readonly Want[]; readonly offers: readonly Offer[] } {
  const wants = deskWants(dossier).map(({ printing, service, grade, maxPrice, currency }): Want => {
    const most = toDesk(maxPrice, currency, `the most for ${printing}`);
    return { printing, service, grade, most: most === null ? null : most.minor / unit };
  });
  const offers = copies.flatMap(({ id, status, landed, printings, service, grade }): Offer[] =>
    status !== 'offered' || 'why' in landed
      ? []
      : [{ copy: id, printings, service, grade, cost: landed.total.minor / unit }],
  );
  return { wants, offers };
}
