import { fileURLToPath } from 'node:url';
import { type Account, accountOf, type Results, resultsOf } from '../../src/chronicle/index.ts';
import { accountGroundIn, type Dossier, readDossier } from '../../src/dossier/index.ts';
import { filesOf } from '../../src/host/index.ts';

/** The folder of the demo's dossier. */
export const DEMO = fileURLToPath(new URL('../../demo/dossier', import.meta.url));

/** The demo with its account. */
export interface Told {
  readonly dossier: Dossier;
  readonly results: Results;
  readonly account: Account;
}

/** Reads the demo and computes its account, prices shown; it takes some seconds. */
export async function toldDemo(): Promise<Told> {
  const dossier = await readDossier(await filesOf(DEMO));
  const ground = accountGroundIn(dossier, null);
  const results = resultsOf(ground, { prices: true });
  return { dossier, results, account: accountOf(ground, results) };
}
