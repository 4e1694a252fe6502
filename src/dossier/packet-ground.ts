import { sayTrait } from '../catalogue/index.ts';
import type { PacketEvent, PacketGround } from '../chronicle/index.ts';
import type { Day } from '../evidence/index.ts';
import { clockOf, landedCosts, ratesOf } from '../market/index.ts';
import { deadlinesOf } from './desk.ts';
import { deskCharges, deskCopies, deskParcels } from './desk-rows.ts';
import { rateRowsOf } from './market-rows.ts';
import { newestDay } from './newest-day.ts';
import { homeOf } from './price-ground.ts';
import { type Cell, rowsOf } from './rows-of.ts';
import type { Dossier } from './types.ts';

/** What a dossier knows of a copy without its pictures; undefined where it has no such copy. */
export function packetGroundIn(
  dossier: Dossier,
  id: string,
): Omit<PacketGround, 'faces' | 'described' | 'pictures' | 'printings'> | undefined {
  const [copy] = rowsOf(dossier, 'desk/copies.csv', (cell) => cell).filter((at) => at('id') === id);
  if (copy === undefined) return undefined;
  const parcel = copy('parcel');
  const [sent = () => ''] = rowsOf(dossier, 'desk/parcels.csv', (cell) => cell).filter(
    (at) => parcel !== '' && at('id') === parcel,
  );
  const events = eventsOf(dossier, id, parcel);
  const on = newestDay(dossier);
  return {
    copy: id,
    subject: dossier.manifest.title || dossier.manifest.subject,
    bought: copy('bought'),
    graded: [copy('service'), copy('grade')].filter(Boolean).join(' '),
    certificate: copy('certificate'),
    seller: sent('seller'),
    venue: sent('venue'),
    purchaseNo: sent('purchase_no'),
    tracking: sent('tracking'),
    listing: [copy('described_as'), copy('listing')].filter(Boolean).join('\n'),
    on,
    observations: observationsOf(dossier, id),
    landed: landedOf(dossier, id),
    events,
    clock: clockOf(deadlinesOf(dossier), { id, parcel }, on ?? (0 as Day)),
  };
}

function eventsOf(dossier: Dossier, id: string, parcel: string): PacketEvent[] {
  const ours = (at: Cell) =>
    at('copy') === id || (at('copy') === '' && parcel !== '' && at('parcel') === parcel);
  return rowsOf(dossier, 'desk/events.csv', (cell) => cell)
    .filter(ours)
    .map((at) => ({
      at: at('at'),
      what: at('what'),
      with: at('with'),
      amount: [at('amount'), at('currency')].filter(Boolean).join(' '),
      note: at('note'),
    }));
}

function observationsOf(dossier: Dossier, id: string): PacketGround['observations'] {
  return rowsOf(dossier, 'desk/observations.csv', (cell) => ({
    copy: cell('copy'),
    trait: sayTrait(cell('trait')),
    value: cell('value'),
    sees: cell('sees'),
  })).filter(({ copy }) => copy === id);
}

function landedOf(dossier: Dossier, id: string): PacketGround['landed'] {
  const home = homeOf(dossier);
  const ground = {
    home,
    charges: deskCharges(dossier, home.currency),
    rates: ratesOf(rateRowsOf(dossier)),
  };
  const all = landedCosts(deskCopies(dossier), deskParcels(dossier), ground);
  return all.find(({ copy }) => copy === id) ?? null;
}
