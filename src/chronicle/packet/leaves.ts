import type { PacketGround, Tick } from './types.ts';

/** One thing that leaves with a packet, or stays. */
export interface PacketPart {
  readonly what: string;
  /** What it is in this packet; several parts are joined. */
  readonly found: string;
  /** By which tick it leaves; null: it always leaves. */
  readonly tick: Tick | null;
  readonly leaves: boolean;
}

/** What of a copy leaves with its packet and what stays, before anything is written. */
export function leavesOf(ground: PacketGround, ticks: ReadonlySet<Tick>): readonly PacketPart[] {
  const { pictures, events } = ground;
  const noted = events.filter(({ note }) => note !== '').length;
  const unowned = pictures.filter(({ rights }) => rights === '').map(({ name }) => name);
  const cost =
    ground.landed !== null && 'total' in ground.landed ? 'landed cost, line by line' : '';
  const all: readonly (readonly [string, string, Tick | null])[] = [
    ['copy', `${ground.copy}: ${ground.printings.join(' or ')}`, null],
    ['pictures', pictures.map(({ name }) => name).join(', '), null],
    ['pictures without rights', unowned.join(', '), null],
    ['the seller’s words', ground.listing, null],
    ['name of seller and venue', joined([ground.seller, ground.venue]), 'seller'],
    ['purchase and tracking numbers', joined([ground.purchaseNo, ground.tracking]), 'purchase'],
    ['certificate', ground.certificate, 'certificate'],
    ['prices and costs', joined([cost, ...events.map(({ amount }) => amount)]), 'costs'],
    ['notes of events', noted === 0 ? '' : `${noted} in your own words`, 'notes'],
    [
      'places in pictures',
      pictures.length === 0 ? '' : 'files as taken, with all that they tell',
      'place',
    ],
  ];
  return all
    .filter(([, found]) => found !== '')
    .map(([what, found, tick]) => ({
      what,
      found,
      tick,
      leaves: tick === null || ticks.has(tick),
    }));
}

function joined(parts: readonly string[]): string {
  return parts.filter(Boolean).join(', ');
}
