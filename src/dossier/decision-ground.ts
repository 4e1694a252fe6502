import { identify } from '../catalogue/index.ts';
import { type Day, isoOf } from '../evidence/index.ts';
import { clockOf, type Desk, type EnteredCopy } from '../market/index.ts';
import { deadlinesOf } from './desk.ts';
import {
  type DeskCopy,
  deskCharges,
  deskCopies,
  deskParcels,
  deskTiers,
  deskWants,
  offeredBack,
} from './desk-rows.ts';
import { gradeChancesIn } from './grade-chances.ts';
import { knownOf, readerOf, seenOf } from './identification.ts';
import type { DossierPrices } from './price-ground.ts';
import { standingOf } from './standing.ts';
import type { Dossier } from './types.ts';

/** The desk of a dossier on the day that its prices hold for: all that is decided from but prices. */
export function deskIn(
  dossier: Dossier,
  { ground: { services, on }, home, rates }: Pick<DossierPrices, 'ground' | 'home' | 'rates'>,
): Desk {
  const deadlines = deadlinesOf(dossier);
  const chances = gradeChancesIn(dossier, services, on);
  const offered = offeredBack(dossier);
  const among = printingsAmong(dossier, on);
  const copies = deskCopies(dossier).map((copy): EnteredCopy => {
    const printings = among(copy);
    return {
      ...copy,
      printings,
      clock: clockOf(deadlines, { id: copy.id, parcel: copy.parcel ?? '' }, on),
      gradeChances: chances(copy.id, printings),
      offeredBack: offered.get(copy.id) ?? null,
    };
  });
  return {
    ...{ on, home, rates, copies },
    parcels: deskParcels(dossier),
    charges: deskCharges(dossier, home.currency),
    tiers: deskTiers(dossier, on),
    wants: deskWants(dossier),
  };
}

/** What a copy may be: its printing, or several by what was seen on it. */
function printingsAmong(dossier: Dossier, on: Day): (copy: DeskCopy) => EnteredCopy['printings'] {
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
