import { type Dossier, type DossierPrices, pricesIn } from '../dossier/index.ts';
import { dayFrom, isoOf } from '../evidence/index.ts';
import { now } from '../host/index.ts';
import { dossierIn } from './dossier.ts';
import { faultsReport } from './report/faults.ts';
import type { Terminal } from './terminal.ts';
import { WrongCall } from './wrong-call.ts';

/**
 * The dossier in a folder and what its prices are learned from on a day; its faults, and a newest
 * day that is still to come, are said on standard error. Throws `WrongCall` where it has no day.
 */
export async function pricedIn(
  folder: string,
  on: string | undefined,
  terminal: Terminal,
): Promise<{ readonly dossier: Dossier; readonly found: DossierPrices }> {
  const dossier = await dossierIn(folder);
  if (dossier.faults.length > 0) terminal.say(faultsReport(dossier.faults, terminal.width));
  const found = pricesIn(dossier, on === undefined ? null : dayFrom(on));
  if (found === undefined)
    throw new WrongCall('No sale, sighting, population or rate has a day: tell one with --on.');
  const day = isoOf(found.ground.on);
  if (day > now().slice(0, 10))
    terminal.say(
      `The newest day in the dossier, ${day}, is still to come: look for a day that was mistyped, or tell a day with --on.\n`,
    );
  return { dossier, found };
}
