import { nameOf } from '../../catalogue/index.ts';
import type { Cells, DossierAnswer } from '../../contract/index.ts';
import type { Step } from '../wire/index.ts';
import { idOf } from '../words/index.ts';

/** What can be added to a dossier by hand. */
export type Addable = 'printing' | 'product';

/** A column as the form asks for it. */
export interface Asked {
  readonly column: string;
  readonly label: string;
  readonly hint?: string;
}

const MARKET: Asked = {
  column: 'market',
  label: 'Market',
  hint: 'A code (GB, KR) or a plain word.',
};

/** The columns that each form asks for, in the order in which they are asked. */
export const ASKED: Readonly<Record<Addable, readonly Asked[]>> = {
  printing: [
    { column: 'language', label: 'Language', hint: 'Its tag: en, ko, pt-BR.' },
    { column: 'product', label: 'Product', hint: 'One of the dossier, or plain words.' },
    MARKET,
    { column: 'number', label: 'Number', hint: 'As printed; none where it has none.' },
    { column: 'finish', label: 'Finish' },
    { column: 'edition', label: 'Edition' },
    { column: 'wave', label: 'Print wave' },
    { column: 'art', label: 'Art' },
    { column: 'channel', label: 'Channel', hint: 'How it reached people: retail, magazine, club.' },
    { column: 'printed_name', label: 'Printed name' },
    { column: 'also_called', label: 'Also called' },
  ],
  product: [
    { column: 'title', label: 'Title' },
    { column: 'kind', label: 'Kind', hint: 'A box, a tin, a periodical, a book.' },
    MARKET,
    { column: 'series', label: 'Series', hint: 'The periodical that it is a number of.' },
    { column: 'issue', label: 'Issue' },
    { column: 'list_price', label: 'List price', hint: 'A number with a point: 4.50.' },
    { column: 'currency', label: 'Currency', hint: 'Its code: EUR, KRW.' },
  ],
};

const FILE: Readonly<Record<Addable, string>> = {
  printing: 'printings.csv',
  product: 'products.csv',
};

function takenIds({ printings, otherIds, products }: DossierAnswer, what: Addable) {
  const rows = what === 'printing' ? printings : products;
  return new Set([...rows.map(({ id }) => id), ...(what === 'printing' ? otherIds : [])]);
}

function written(cells: Cells): Cells {
  const full = Object.entries(cells).map(([column, value]) => [column, value.trim()] as const);
  return Object.fromEntries(full.filter(([, value]) => value !== ''));
}

/** An id that is free, made of the words that tell the row from others; empty while there are none. */
export function suggestedId(what: Addable, cells: Cells, dossier: DossierAnswer): string {
  const { language, product, number, finish, wave, title, series, issue } = written(cells);
  const words =
    what === 'printing'
      ? [language, product, number, finish, wave ? `wave ${wave}` : '']
      : [title ?? [series, issue].filter(Boolean).join(' ')];
  const said = words.filter((word) => word && word !== 'none').join(' ');
  return said === '' ? '' : idOf(said, takenIds(dossier, what));
}

const TESTS: readonly (readonly [string, RegExp, string])[] = [
  ['language', /^[A-Za-z]{2,3}(-[A-Za-z0-9]{1,8})*$/, 'A language is its tag, as en, ko or pt-BR.'],
  ['list_price', /^\d+(\.\d+)?$/, 'A price is a number with a point, as 4.50.'],
  ['currency', /^[A-Z]{3}$/, 'A currency is its code of three capitals, as EUR.'],
];

/** What is still wrong in a form, in a sentence; empty where nothing is. */
export function wrongIn(what: Addable, cells: Cells, id: string, dossier: DossierAnswer): string {
  const full = written(cells);
  if (Object.keys(full).length === 0) return `Say something of the ${what}.`;
  for (const [column, test, sentence] of TESTS) {
    const value = full[column];
    if (value !== undefined && value !== 'none' && !test.test(value)) return sentence;
  }
  if (full.list_price && !full.currency) return 'Say in which currency the price is.';
  if (!/^[a-z0-9][a-z0-9-]*$/.test(id)) {
    return 'An id is made of small letters, digits and hyphens, and begins with no hyphen.';
  }
  return takenIds(dossier, what).has(id) ? `The id ${id} is taken.` : '';
}

/** The step that adds the row; a printing is of the subject that the others are of. */
export function addingStep(what: Addable, cells: Cells, id: string, dossier: DossierAnswer): Step {
  const subjects = new Set(dossier.printings.map((row) => row.cells.subject ?? ''));
  const [subject = ''] = what === 'printing' && subjects.size === 1 ? subjects : [];
  const full = written(cells);
  const after = written({ id, subject, ...full });
  const productTitle = dossier.products.find((row) => row.id === full.product)?.cells.title;
  const { title, detail } = nameOf({ id, cells: full, productTitle });
  const name = what === 'product' ? (full.title ?? id) : [title, detail].filter(Boolean).join(', ');
  return { label: `Add the ${what} ${name}`, changes: [{ file: FILE[what], op: 'add', after }] };
}

/** What the dossier has in a column already, to choose from while typing. */
export function knownIn(what: Addable, column: string, dossier: DossierAnswer): readonly string[] {
  const rows = what === 'printing' ? dossier.printings : dossier.products;
  return [...new Set(rows.map(({ cells }) => cells[column] ?? ''))].filter(Boolean).sort();
}
