import type { Chance } from '../chance.ts';
import { copied, copyable } from './copies.ts';
import type { Design, Release, Slot } from './design.ts';
import { drawDelays, SignedHistogram } from './histograms.ts';
import type { Kin } from './kin.ts';
import { type Around, readAs } from './mistakes.ts';
import { DOUBT, NOISE_HISTOGRAM, READINGS, type Reading } from './numbers.ts';
import type { SharesOf } from './rates.ts';
import type { Said } from './said.ts';
import { about, nearSpan, noiseSpan } from './spans.ts';

/** What all is drawn before anybody says anything. */
export interface Drawn {
  readonly days: readonly number[];
  readonly lags: readonly number[];
  readonly kin: Kin;
  readonly sharesOf: SharesOf;
}

/** What a source says of itself in a slot; undefined where the model holds it to be impossible. */
type Own = (slot: Slot) => Said | undefined;

const NEAR: readonly Reading[] = [
  'right',
  'day-before',
  'day-after',
  'few-days',
  'swapped',
  'first-of-month',
  'year-off',
];

/**
 * What every source says, in the order of the slots: other properties first, since the date on a
 * cover may be taken for the day of sale; parents before their copies. Undefined where a value was
 * drawn that the model holds to be impossible.
 */
export function say(chance: Chance, design: Design, drawn: Drawn): Said[] | undefined {
  const said = new Map<Slot, Said>();
  const isDay = (slot: Slot) => slot.property === 'on-sale';
  const others = design.slots.filter((slot) => !isDay(slot));
  sayAll(chance, others, design, drawn, said, ownProperty(chance, design, drawn));
  const own = ownDay(chance, design, drawn, [...said.values()]);
  const all = sayAll(chance, design.slots.filter(isDay), design, drawn, said, own);
  return all ? design.slots.map((slot) => said.get(slot)!) : undefined;
}

/** Fills `said` for some slots; false where a value was drawn that the model holds impossible. */
function sayAll(
  chance: Chance,
  slots: readonly Slot[],
  { sources }: Design,
  { kin }: Drawn,
  said: Map<Slot, Said>,
  own: Own,
): boolean {
  const place = (source: number, { property, release }: Slot) =>
    `${source} ${property} ${release.index}`;
  const slotAt = new Map(slots.map((slot) => [place(slot.source, slot), slot]));
  const rank = sources.map((_, s) => kin.order.indexOf(s));
  for (const slot of [...slots].sort((a, b) => rank[a.source]! - rank[b.source]!)) {
    const from = slotAt.get(place(kin.parents[slot.source]!, slot));
    const inRun = from !== undefined && copyable(slot) && kin.copiedRun(slot);
    const one = inRun && chance.yes(kin.rate) ? copied(chance, slot, said.get(from)!) : own(slot);
    if (one === undefined) return false;
    said.set(slot, one);
  }
  return true;
}

function ownProperty(chance: Chance, { products }: Design, { days }: Drawn): Own {
  const delays = drawDelays(chance);
  const series = new Map(products.map(({ id, series }) => [id, series]));
  return (slot) => {
    const { product, index } = slot.release;
    const day = delays(slot.property)(chance, days[index]!, series.get(product));
    return { slot, day, how: 'property' };
  };
}

function ownDay(chance: Chance, design: Design, drawn: Drawn, properties: readonly Said[]): Own {
  const noise = new SignedHistogram(chance, NOISE_HISTOGRAM);
  const rows = neighboursOf(design.slots);
  const dayOf = (release: Release | undefined) => release && drawn.days[release.index]!;
  const covers = properties.filter(({ slot }) => slot.property === 'cover-date');
  return (slot) => {
    const { release, source } = slot;
    const [above, below] = rows.get(slot)!;
    const around: Around = {
      lag: drawn.lags[source]!,
      rows: [dayOf(above), dayOf(below)],
      siblings: siblingsOf(design, release).map((one) => dayOf(one)!),
      covers: covers.filter((cover) => cover.slot.release === release).map(({ day }) => day),
      noise,
    };
    return stateDay(chance, slot, dayOf(release)!, drawn.sharesOf(source, release), around);
  };
}

function siblingsOf({ releases }: Design, release: Release): Release[] {
  return releases.filter((one) => one !== release && one.product === release.product);
}

/** The releases in the rows above and below of each slot's source. */
function neighboursOf(slots: readonly Slot[]) {
  const onSale = slots.filter(({ property }) => property === 'on-sale');
  return new Map(
    onSale.map((slot, i) => {
      const beside = (j: number) =>
        onSale[j]?.source === slot.source ? onSale[j].release : undefined;
      return [slot, [beside(i - 1), beside(i + 1)] as const];
    }),
  );
}

function stateDay(
  chance: Chance,
  slot: Slot,
  day: number,
  shares: readonly number[],
  around: Around,
): Said | undefined {
  const drawn = READINGS[chance.weighted(shares)]!;
  const near = NEAR.includes(drawn);
  const how = slot.mark === '?' && near && chance.yes(DOUBT) ? 'noise' : drawn;
  const { precision } = slot;
  let stated: number | undefined;
  if (precision === 'day') {
    const approximate = slot.mark === '~' && near;
    stated = approximate ? about(chance, day) : readAs(chance, how, day, around);
  } else if (how === 'noise') stated = noiseSpan(chance, day, precision, around.noise);
  else if (near) stated = nearSpan(chance, day, precision);
  else if (how !== 'cover-date') stated = readAs(chance, how, day, around);
  return stated === undefined ? undefined : { slot, day: stated, how };
}
