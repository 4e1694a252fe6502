import { chooseBest } from '../../maths/index.ts';

/** Something that the owner looks for. */
export interface Want {
  readonly printing: string;
  /** Null for raw. */
  readonly service: string | null;
  readonly grade: string | null;
  /** The most that it may cost landed, in the desk's currency; null where not entered. */
  readonly most: number | null;
}

/** A copy that is offered. */
export interface Offer {
  readonly copy: string;
  readonly printings: readonly { readonly id: string; readonly p: number }[];
  readonly service: string | null;
  readonly grade: string | null;
  /** Landed, in the desk's currency. */
  readonly cost: number;
}

/** What to buy for the wants. */
export interface Purchases {
  /** For each want, in order, the copy that is bought for it; null for none. */
  readonly bought: readonly (string | null)[];
  readonly cost: number;
  /** Sum of what the owner would have paid at most less what is paid. */
  readonly saved: number;
  /** No choice saves more. */
  readonly bound: number;
}

/** Whether an offer is what is wanted: most probably the printing, and the very grade where one is named. */
export function fits(want: Want, offer: Offer): boolean {
  const p = offer.printings.find(({ id }) => id === want.printing)?.p ?? 0;
  if (p <= 0.5 || offer.service !== want.service) return false;
  return want.grade === null || offer.grade === want.grade;
}

/**
 * Chooses what to buy: for each want at most one offer, none twice, none dearer than the owner's
 * limit, all within the budget; the greatest sum of limit less cost, by integer programming.
 *
 * @param budget in whole units of the desk's currency; null without a limit
 */
export async function bestPurchases(
  wants: readonly Want[],
  offers: readonly Offer[],
  budget: number | null,
): Promise<Purchases> {
  const pairs = wants.flatMap((want, w) =>
    offers.flatMap((offer, o) => {
      const saved = want.most === null ? Number.NEGATIVE_INFINITY : want.most - offer.cost;
      return saved >= 0 && fits(want, offer) ? [{ w, o, saved, cost: offer.cost }] : [];
    }),
  );
  const among = (of: (pair: (typeof pairs)[number]) => number, count: number) =>
    Array.from({ length: count }, (_, at) => ({
      sum: pairs.flatMap((pair, i) => (of(pair) === at ? [[i, 1] as const] : [])),
      most: 1,
    })).filter(({ sum }) => sum.length > 1);
  const spent = { sum: pairs.map(({ cost }, i) => [i, cost] as const), most: budget ?? 0 };
  const solved = await chooseBest({
    variables: pairs.length,
    // A want that is met at its very limit is met all the same.
    gain: pairs.map(({ saved }, i) => [i, saved + 1e-3] as const),
    limits: [
      ...among(({ w }) => w, wants.length),
      ...among(({ o }) => o, offers.length),
      ...(budget === null || pairs.length === 0 ? [] : [spent]),
    ],
  });
  const chosen = pairs.filter((_, i) => solved.chosen[i]);
  const saved = chosen.reduce((sum, pair) => sum + pair.saved, 0);
  return {
    bought: wants.map((_, w) => {
      const pair = chosen.find((one) => one.w === w);
      return pair === undefined ? null : (offers[pair.o] as Offer).copy;
    }),
    cost: chosen.reduce((sum, { cost }) => sum + cost, 0),
    saved,
    bound: saved + (solved.bound - solved.gain),
  };
}
