import { date } from '../../dating/index.ts';
import { weighFacts } from '../../evidence/index.ts';
import { pricesOf } from '../../market/index.ts';
import { populationOf } from '../../population/index.ts';
import type { AccountGround, Results } from './ground.ts';

/** How the steps are asked. */
export interface ResultsOptions {
  /** Whole number from which all chance is drawn. */
  readonly seed?: number;
  /** Prices are worked out, to be shown. */
  readonly prices?: boolean;
  /** Share of the work that is done, 0 to 1. */
  readonly onProgress?: (share: number) => void;
}

/** Asks every step what a dossier leads to. */
export function resultsOf(
  ground: AccountGround,
  { seed = 1, prices = false, onProgress }: ResultsOptions = {},
): Results {
  const { evidence, records } = ground;
  const dating = date(evidence, { seed, ...(onProgress ? { onProgress } : {}) });
  const shown = prices ? ground.prices : null;
  return {
    dating,
    population: populationOf(records, evidence, ground.on ?? records.newestDay),
    facts: weighFacts(evidence, dating.sources),
    prices: shown === null ? null : pricesOf(shown.ground, seed).of,
  };
}
