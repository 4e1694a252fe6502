import type { Day } from '../evidence/index.ts';
import { isoOf } from '../evidence/index.ts';
import {
  type Home,
  type LeftOut,
  type PriceGround,
  type Rates,
  ratesOf,
  usableSales,
} from '../market/index.ts';
import { gradedBy, pricedPrintings, rateRowsOf, saleRowsOf } from './market-rows.ts';
import { addShared, newestCounts } from './newest-counts.ts';
import { newestDay } from './newest-day.ts';
import type { Dossier } from './types.ts';

/** What prices are learned from in a dossier, with what was left out and taken for granted. */
export interface DossierPrices {
  readonly ground: PriceGround;
  readonly home: Home;
  readonly rates: Rates;
  /** The row of `sales.csv` that each sale stands in. */
  readonly rows: readonly number[];
  readonly leftOut: readonly LeftOut[];
  readonly assumed: readonly string[];
}

/** Euros that a raw card may fetch where nothing was ever sold. Judgement, no source; very wide. */
const BEFORE_EUR = 20;

/** The collector's home as `desk/desk.json` has it. */
export function homeOf({ documents }: Dossier): Home {
  const desk = (documents.get('desk/desk.json') ?? {}) as Record<string, unknown>;
  const limit = typeof desk.regret_limit === 'number' ? desk.regret_limit : null;
  return {
    currency: typeof desk.currency === 'string' ? desk.currency : 'EUR',
    country: typeof desk.country === 'string' ? desk.country : '',
    regretLimit: limit !== null && limit > 0 && limit < 1 ? limit : null,
  };
}

/**
 * What prices are learned from on a day.
 *
 * @param on null for the newest day of sales, sightings, populations and rates
 * @returns undefined where the dossier has no such day and none is told
 */
export function pricesIn(dossier: Dossier, on: Day | null): DossierPrices | undefined {
  const day = on ?? newestDay(dossier);
  if (day === null) return undefined;
  const home = homeOf(dossier);
  const rates = ratesOf(rateRowsOf(dossier));
  const services = gradedBy(dossier);
  const printings = pricedPrintings(dossier, gradedCounts(dossier, day));
  const { sales, leftOut } = usableSales(saleRowsOf(dossier), {
    printings: new Set(printings.map(({ id }) => id)),
    services,
    rates,
    home: home.currency,
    on: day,
  });
  const desk = rates.on(home.currency, day);
  const before = BEFORE_EUR * (desk ? Number(desk.perEur.over) / Number(desk.perEur.under) : 1);
  const named = dossier.documents.has('desk/desk.json');
  return {
    ground: { printings, services, sales, on: day, before },
    home,
    rates,
    rows: sales.map(({ row }) => row),
    leftOut,
    assumed: named ? [] : ['desk/desk.json names no currency: prices are in euros'],
  };
}

/** Graded copies by printing; those without a copy are not known. */
function gradedCounts(dossier: Dossier, on: Day): Map<string, number> {
  const graded = new Map<string, number>();
  for (const { printing, count } of newestCounts(dossier, isoOf(on)))
    if (count > 0) addShared(graded, [printing], count);
  return graded;
}
