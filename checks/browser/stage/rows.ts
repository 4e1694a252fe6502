import type { Cells, DossierAnswer } from '../../../src/contract/index.ts';

/** Numbers between 0 and 1 from a seed (a small congruential generator: for pictures, not statistics). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

const PRODUCTS: readonly (readonly [string, string, string, string])[] = [
  ['lake-story', 'Lake Story supplement', 'periodical', 'FI'],
  ['first-box', 'First Box', 'box', 'BR'],
  ['hearth-starter', 'Hearth Starter', 'starter', 'KR'],
  ['annual-six', 'Annual Six', 'book', 'GB'],
  ['moon-monthly-1', 'Moon Monthly 1/2004', 'periodical', 'KR'],
  ['road-box', 'Road Box', 'box', 'KR'],
  ['club-card', 'Club card', 'giveaway', 'GB'],
];

const SOURCES: readonly (readonly [string, string, string])[] = [
  ['publisher', 'Publisher’s page', 'publisher-database'],
  ['shop', 'Reed Street, shop notice', 'store-listing'],
  ['checklist', 'Sheaf checklist', 'checklist'],
  ['label', 'Fennel label', 'grading-label'],
  ['cover', 'Moon Monthly', 'magazine'],
  ['diary', 'A player’s diary', 'own-observation'],
];

const FINISHES = ['plain', 'foil', 'holofoil', 'none'];
const LANGUAGES = ['fi', 'pt-BR', 'ko', 'en', 'da'];

function table(file: readonly Cells[]) {
  return file.map((cells, at) => ({ cells, row: at + 2 }));
}

function printingCells(at: number): Cells {
  const product = PRODUCTS[at % PRODUCTS.length]?.[0] ?? '';
  return {
    id: `printing-${at + 1}`,
    language: LANGUAGES[at % LANGUAGES.length] ?? 'en',
    market: PRODUCTS[at % PRODUCTS.length]?.[3] ?? '',
    product,
    number: at % 4 === 0 ? 'none' : `RB-${(at % 37) + 1}`,
    finish: FINISHES[at % FINISHES.length] ?? 'plain',
    edition: at % 5 === 2 ? 'second edition' : '',
    wave: at % 3 === 1 ? String((at % 2) + 1) : '',
  };
}

/** What the made-up dossier is made of; claims and sources can be changed. */
export interface Tables {
  readonly printings: number;
  readonly claims: readonly Cells[];
  readonly sources: readonly Cells[];
}

/** The sources that every made-up dossier begins with. */
export function madeUpSources(): readonly Cells[] {
  return SOURCES.map(([id, title, kind]) => ({ id, title, kind, cites: '' }));
}

function printingsOf(n: number): DossierAnswer['printings'] {
  const cells = Array.from({ length: n }, (_, at) => printingCells(at));
  return table(cells).map((row) => ({ ...row, id: row.cells.id ?? '' }));
}

function productsOf(): DossierAnswer['products'] {
  const cells = PRODUCTS.map(([id, title, kind, market]) => ({ id, title, kind, market }));
  return table(cells).map((row) => ({ ...row, id: row.cells.id ?? '' }));
}

function contentsOf(n: number): DossierAnswer['contents'] {
  const cells = PRODUCTS.slice(0, Math.min(n, 5)).map(([product], at) => ({
    product,
    printing: `printing-${at + 1}`,
    odds: at % 2 ? '1/4' : '1',
  }));
  return table(cells).map((row) => ({
    ...row,
    product: row.cells.product ?? '',
    printing: row.cells.printing ?? '',
  }));
}

function sourcesOf(cells: readonly Cells[]): DossierAnswer['sources'] {
  return table(cells).map((row) => ({
    ...row,
    id: row.cells.id ?? '',
    kind: row.cells.kind ?? 'other',
    cites: [],
  }));
}

function claimsOf(cells: readonly Cells[]): DossierAnswer['claims'] {
  return table(cells).map((row) => ({
    ...row,
    printings: (row.cells.printing ?? '').split('|').filter(Boolean),
    source: row.cells.source ?? '',
    property: row.cells.property ?? '',
    value: row.cells.value ?? '',
  }));
}

const FACT: DossierAnswer['facts'][number] = {
  printing: 'printing-2',
  property: 'finish',
  values: [
    { value: 'foil', p: 0.91, claims: [2], own: true },
    { value: 'plain', p: 0.09, claims: [3], own: false },
  ],
  p_other: 0,
  disputed: true,
  claims: [],
  why: 'The publisher says *foil*; the checklist is often wrong about finishes.',
};

const FAULT: DossierAnswer['faults'][number] = {
  file: 'claims.csv',
  row: 41,
  column: 'value',
  found: '1996-13',
  expected: 'a date in EDTF',
  message: 'A year has no month 13.',
};

/** A made-up dossier in the shape of the wire. */
export function madeUpDossier(version: number, tables: Tables): DossierAnswer {
  const reason = 'The second names the first.';
  const order = { earlier: 'printing-1', later: 'printing-2' };
  return {
    version,
    folder: 'made-up',
    demo: true,
    writable: true,
    notices: [],
    unsettled: [],
    title: 'Tin Kingfisher',
    subject: 'Tin Kingfisher',
    language: 'en',
    printings: printingsOf(tables.printings),
    otherIds: [],
    held: [
      { printing: 'printing-3', copies: 1, perhaps: 0 },
      { printing: 'printing-5', copies: 0, perhaps: 2 },
    ],
    products: productsOf(),
    contents: contentsOf(tables.printings),
    sources: sourcesOf(tables.sources),
    claims: claimsOf(tables.claims),
    orders: [{ ...order, row: 2, cells: { ...order, reason } }],
    weekdays: [],
    faults: [FAULT],
    facts: [FACT],
    undo: null,
    redo: null,
  };
}
