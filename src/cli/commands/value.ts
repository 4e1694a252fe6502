import { type DossierPrices, pricesIn } from '../../dossier/index.ts';
import { dayFrom, isoOf } from '../../evidence/index.ts';
import { now } from '../../host/index.ts';
import { backTest, type Prices, pricesOf } from '../../market/index.ts';
import { dossierIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { calledIn } from '../report/called.ts';
import { faultsReport } from '../report/faults.ts';
import { valueReport } from '../report/value.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `value` was called with. */
export interface ValueOptions {
  readonly json?: boolean;
  readonly on?: string;
  readonly printing?: string;
  readonly seed?: number;
}

/**
 * Says what a copy of each printing may fetch, by service and grade; faults are listed on standard
 * error and answered by 1. Writes nothing to the folder.
 */
export async function value(
  folder: string,
  { json = false, on, printing, seed = 1 }: ValueOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const dossier = await dossierIn(folder);
  const { evidence, faults } = dossier;
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  const found = pricesIn(dossier, on === undefined ? null : dayFrom(on));
  if (found === undefined)
    throw new WrongCall('No sale, sighting, population or rate has a day: tell one with --on.');
  if (printing !== undefined && !found.ground.printings.some(({ id }) => id === printing))
    throw new WrongCall(`${printing} is no printing of this dossier.`);
  if (isoOf(found.ground.on) > now().slice(0, 10))
    terminal.say(
      `The newest day in the dossier, ${isoOf(found.ground.on)}, is still to come: look for a day that was mistyped, or tell a day with --on.\n`,
    );
  const prices = pricesOf(found.ground, seed);
  if (json) await writeJson(answerOf(found, prices, seed), terminal);
  else
    for (const part of valueReport(
      found,
      prices,
      calledIn(evidence),
      backTest(found.ground, seed),
      printing,
      terminal.width,
    ))
      await terminal.write(part);
  return faults.length === 0 ? 0 : 1;
}

function answerOf(
  { ground, home, rows, leftOut, assumed }: DossierPrices,
  prices: Prices,
  seed: number,
): object {
  return {
    currency: home.currency,
    on: isoOf(ground.on),
    seed,
    printings: ground.printings.map(({ id }) => ({ id, grades: prices.of.get(id) })),
    sales: rows.map((row, i) => ({ row, p_odd: prices.odd[i] })),
    left_out: leftOut,
    assumed,
  };
}
