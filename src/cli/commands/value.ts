import type { DossierPrices } from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { backTest, type Prices, pricesOf } from '../../market/index.ts';
import { writeJson } from '../json.ts';
import { pricedIn } from '../priced.ts';
import { calledIn } from '../report/called.ts';
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
  const { dossier, found } = await pricedIn(folder, on, terminal);
  const { evidence, faults } = dossier;
  if (printing !== undefined && !found.ground.printings.some(({ id }) => id === printing))
    throw new WrongCall(`${printing} is no printing of this dossier.`);
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
