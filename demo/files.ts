import { chance } from '../src/maths/index.ts';
import { COLUMNS } from './columns.ts';
import * as desk from './desk/papers.ts';
import { CHARGES, DESK } from './desk/settings.ts';
import { LABELS } from './market/labels.ts';
import { COUNTERFEITS, TRAITS } from './market/marks.ts';
import { CORRECTIONS, ODD_SALES, SEARCHES } from './market/odd.ts';
import { populationRows } from './market/population.ts';
import { rateRows } from './market/rates.ts';
import { saleRows } from './market/sales.ts';
import { sightingRows, supplyRows } from './market/seen.ts';
import { CERTIFICATE_ROWS, SERVICE_ROWS } from './market/services.ts';
import { slabs } from './market/slabs.ts';
import { pictureRows } from './photos/rows.ts';
import { CLAIMS } from './research/claims/index.ts';
import { PRINTINGS } from './research/printings.ts';
import { CONTENTS, PRODUCTS } from './research/products.ts';
import { ORDERS, RELEASES } from './research/releases.ts';
import { DERIVES, SOURCES } from './research/sources.ts';
import { STORY } from './story/text.ts';
import { type Row, tableText } from './table.ts';

const MANIFEST = {
  format: 1,
  title: 'Tidebell Hare',
  subject: 'tidebell-hare',
  language: 'en',
  width_mm: 63,
  height_mm: 88,
};

/** Every file of the demo dossier by its name in the folder, with its text. */
export function demoFiles(): ReadonlyMap<string, string> {
  const tables = Object.entries({ ...researchTables(), ...marketTables(), ...deskTables() });
  return new Map([
    ['dossier.json', json(MANIFEST)],
    ...tables.map(([name, rows]): [string, string] => [name, tableText(columnsOf(name), rows)]),
    ...STORY,
    ['desk/desk.json', json(DESK)],
    ['desk/charges.json', json(CHARGES)],
  ]);
}

/** What is true in the invented world, for tests: days, derivations, and how each claim came about. */
export function truthText(): string {
  const claims = CLAIMS.map((claim, at) => ({ row: at + 2, truth: claim.truth }));
  const labels = LABELS.map(({ service, label, copies }) => ({ service, label, copies }));
  return json({ releases: RELEASES, derives: DERIVES, claims, labels });
}

type Tables = Readonly<Record<string, readonly Row[]>>;

function researchTables(): Tables {
  return {
    'printings.csv': PRINTINGS.map((row) => ({ ...row, subject: MANIFEST.subject })),
    'products.csv': PRODUCTS,
    'contents.csv': CONTENTS,
    'traits.csv': TRAITS,
    'counterfeits.csv': COUNTERFEITS,
    'sources.csv': SOURCES,
    'claims.csv': CLAIMS.map((claim) => claim.row),
    'orders.csv': ORDERS,
    'searches.csv': SEARCHES,
    'corrections.csv': CORRECTIONS,
    'pictures.csv': pictureRows(),
  };
}

/** Each table draws from a seed of its own, so that a change in one leaves the others alone. */
function marketTables(): Tables {
  const rates = rateRows(chance(311));
  const all = slabs(chance(312));
  const sales = [...saleRows(all, rates, chance(313)), ...ODD_SALES];
  return {
    'services.csv': SERVICE_ROWS,
    'certificates.csv': CERTIFICATE_ROWS,
    'population.csv': populationRows(chance(314)),
    'rates.csv': rates,
    'sales.csv': sales.sort((a, b) => ((a.date ?? '') < (b.date ?? '') ? -1 : 1)),
    'sightings.csv': sightingRows(all, chance(315)),
    'supply.csv': supplyRows(chance(316)),
  };
}

function deskTables(): Tables {
  return {
    'desk/copies.csv': desk.COPIES,
    'desk/parcels.csv': desk.PARCELS,
    'desk/events.csv': desk.EVENTS,
    'desk/deadlines.csv': desk.DEADLINES,
    'desk/observations.csv': desk.OBSERVATIONS,
    'desk/tiers.csv': desk.TIERS,
    'desk/batches.csv': desk.BATCHES,
    'desk/wants.csv': desk.WANTS,
  };
}

function columnsOf(name: string): readonly string[] {
  return (COLUMNS[name] ?? '').split(' ');
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
