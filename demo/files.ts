import { CLAIMS } from './research/claims/index.ts';
import { ORDERS, PRINTINGS, RELEASES } from './research/printings.ts';
import { CONTENTS, PRODUCTS } from './research/products.ts';
import { DERIVES, SOURCES } from './research/sources.ts';
import { type Row, tableText } from './table.ts';

const COLUMNS: Readonly<Record<string, string>> = {
  'printings.csv':
    'id subject language market product number finish edition wave art channel printed_name reading also_called rarity printed_in part_of replaced_by',
  'products.csv': 'id title kind market series issue list_price currency',
  'contents.csv': 'product printing odds',
  'sources.csv': 'id title kind citation url accessed archived cites service publish',
  'claims.csv': 'printing product source property value locator quote stated_on read_on note',
  'orders.csv': 'earlier later reason',
};

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
  const tables: Readonly<Record<string, readonly Row[]>> = {
    'printings.csv': PRINTINGS.map((row) => ({ ...row, subject: MANIFEST.subject })),
    'products.csv': PRODUCTS,
    'contents.csv': CONTENTS,
    'sources.csv': SOURCES,
    'claims.csv': CLAIMS.map((claim) => claim.row),
    'orders.csv': ORDERS,
  };
  const texts = Object.entries(tables).map(
    ([name, rows]) => [name, tableText((COLUMNS[name] ?? '').split(' '), rows)] as const,
  );
  return new Map([['dossier.json', `${JSON.stringify(MANIFEST, null, 2)}\n`], ...texts]);
}

/** What is true in the invented world, for tests: days, derivations, and how each claim came about. */
export function truthText(): string {
  const readings = CLAIMS.map((claim, at) => ({ row: at + 2, truth: claim.truth }));
  return `${JSON.stringify({ releases: RELEASES, derives: DERIVES, claims: readings }, null, 1)}\n`;
}
