import type { IdentifyAnswer, ListingAnswer, ListingRequest } from '../../contract/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { type Desk, type Listing, weighListing } from '../../market/index.ts';
import { Refused } from '../refusal.ts';
import type { Deciding } from './deciding.ts';
import type { Identifying } from './identifying.ts';
import { landedOnWire } from './on-wire.ts';

/** Candidates below it weigh nothing in what a listing may fetch. */
const LIKELY = 0.001;

/** Weighs a listing: which printing it can be, what it would cost landed, how high a bid may be. */
export async function weighed(
  request: ListingRequest,
  deciding: Deciding,
  identifying: Identifying,
): Promise<ListingAnswer> {
  const priced = await deciding.priced(request.on);
  if (!priced) throw new Refused('bad-request', 'Say for which day: the dossier names none.');
  const { words, service } = request;
  const identified = await identifying.identify({
    saw: [],
    listing: words,
    graded: service !== '',
  });
  const listing = { ...offerOf(request), ...mayBe(identified) };
  const { desk, prices } = priced;
  const { landed, interval80, ...found } = weighListing(desk, prices, listing);
  const { currency, regretLimit } = desk.home;
  return {
    ...{ on: isoOf(desk.on), currency, identified, regretLimit, pFalse: listing.pFalse },
    ...found,
    assumed: [...found.assumed],
    landed: landedOnWire(landed),
    interval80: interval80 && [...interval80],
    highestBidThere: inCurrency(desk, request.currency, found.highestBid),
  };
}

function offerOf(request: ListingRequest): Omit<Listing, 'printings' | 'pFalse'> {
  const { price, currency, origin, shippedBy, shipping, service, grade } = request;
  return {
    ...{ price, currency, origin, shippedBy, shipping: shipping || null },
    ...{ service: service || null, grade: grade || null },
  };
}

/** The printings by their share of those that are likely, and the chance that it is a false copy. */
function mayBe({ candidates }: IdentifyAnswer): Pick<Listing, 'printings' | 'pFalse'> {
  const likely = candidates.filter(({ kind, p }) => kind === 'printing' && p >= LIKELY);
  const all = likely.reduce((sum, { p }) => sum + p, 0);
  const pFalse = candidates.reduce((sum, { kind, p }) => (kind === 'printing' ? sum : sum + p), 0);
  return { printings: likely.map(({ id, p }) => ({ id, p: p / all })), pFalse };
}

function inCurrency({ rates, home, on }: Desk, currency: string, amount: number | null) {
  const [there, here] = [rates.on(currency, on), rates.on(home.currency, on)];
  if (amount === null || !there || !here) return null;
  const perEur = ({ perEur: { over, under } }: typeof here) => Number(over) / Number(under);
  return (amount * perEur(there)) / perEur(here);
}
