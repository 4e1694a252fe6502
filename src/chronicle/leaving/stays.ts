import { sayTrait } from '../../catalogue/index.ts';
import type { DossierRow, DossierTable, Harm, LeavingGround, Shown, Stay } from './types.ts';

/** Whether a file of a dossier belongs to its owner's desk. */
export function isDesk(file: string): boolean {
  return file.startsWith('desk/');
}

/** The cell of a row; empty where it is not known. */
export function cellOf({ cells }: DossierRow, column: string): string {
  return (cells[column] ?? '').trim();
}

/** Rows of a table; none where it is not there. */
export function rowsIn({ tables }: LeavingGround, file: string): readonly DossierRow[] {
  return tables.find((table) => table.file === file)?.rows ?? [];
}

/**
 * Everything that stays at home whatever is published: the desk, what is marked to stay with all
 * that would give it away, readers' names without consent, certificates, and prices unless shown.
 */
export function staysIn(ground: LeavingGround, shown: Shown): readonly Stay[] {
  const home = heldSources(ground);
  return [
    ...ground.tables.filter(({ file }) => isDesk(file)).map(deskStays),
    ...ground.documents.map((file) => stay(file, null, null, 'holding', 'a file', DESK)),
    ...traitStays(rowsIn(ground, 'traits.csv')),
    ...ground.tables.flatMap((table) => sourceStays(table, home)),
    ...pictureStays(ground),
    ...readerStays(rowsIn(ground, 'corrections.csv')),
    ...numberStays(ground),
    ...(shown.prices ? [] : priceStays(ground)),
  ];
}

function stay(
  file: string,
  row: number | null,
  column: string | null,
  what: Harm,
  found: string,
  why: string,
): Stay {
  return { file, row, column, what, found, leaves: false, why };
}

function counted({ length }: readonly unknown[], one: string): string {
  return `${length} ${one}${length === 1 ? '' : 's'}`;
}

function deskStays({ file, rows }: DossierTable): Stay {
  return stay(file, null, null, 'holding', counted(rows, 'row'), DESK);
}

const DESK = 'The desk stays with its owner.';

/** A trait that one row marks to stay is told of none: the others would say what to look at. */
function traitStays(rows: readonly DossierRow[]): Stay[] {
  const nameOf = (row: DossierRow) => sayTrait(cellOf(row, 'trait').toLowerCase());
  const home = new Set(heldTraits(rows).map(nameOf));
  return rows
    .filter((row) => home.has(nameOf(row)))
    .map((row) => {
      const found = `${cellOf(row, 'of')}: ${cellOf(row, 'trait')}`;
      const own = cellOf(row, 'publish') === 'no';
      const why = own ? 'It is marked to stay.' : 'Another row marks this trait to stay.';
      return stay('traits.csv', row.row, null, 'trait', found, why);
    });
}

/** The rows of traits that are themselves marked to stay. */
export function heldTraits(rows: readonly DossierRow[]): readonly DossierRow[] {
  return rows.filter((row) => cellOf(row, 'publish') === 'no');
}

/** Ids of the sources that are marked to stay. */
export function heldSources(ground: LeavingGround): ReadonlySet<string> {
  const held = rowsIn(ground, 'sources.csv').filter((row) => cellOf(row, 'publish') === 'no');
  return new Set(held.map((row) => cellOf(row, 'id')));
}

function sourceStays({ file, rows }: DossierTable, home: ReadonlySet<string>): Stay[] {
  if (home.size === 0 || isDesk(file)) return [];
  const why = 'Its source is marked to stay.';
  return rows.flatMap((row): Stay[] => {
    const id = file === 'sources.csv' ? cellOf(row, 'id') : cellOf(row, 'source');
    if (home.has(id)) return [stay(file, row.row, null, 'source', id, why)];
    const cites = file === 'sources.csv' ? cellOf(row, 'cites').split('|') : [];
    const remains = cites.filter((one) => !home.has(one.trim()));
    if (remains.length === cites.length) return [];
    const found = cites.filter((one) => home.has(one.trim())).join('|');
    const cell = stay(file, row.row, 'cites', 'source', found, 'That source is marked to stay.');
    return [{ ...cell, remains: remains.join('|') }];
  });
}

function pictureStays(ground: LeavingGround): Stay[] {
  const copies = new Set(rowsIn(ground, 'desk/copies.csv').map((row) => cellOf(row, 'id')));
  const home = heldSources(ground);
  return rowsIn(ground, 'pictures.csv').flatMap((row) => {
    const why = whyPictureStays(row, copies, home);
    return why === null
      ? []
      : [stay('pictures.csv', row.row, null, 'picture', cellOf(row, 'file'), why)];
  });
}

/** Roles of pictures that show a card as it is; the others are evidence, offers and measurements. */
const SHOWN = ['reference', 'illustration', 'arrival', ''];

/** Why a picture stays; null where it may leave. */
function whyPictureStays(
  row: DossierRow,
  copies: ReadonlySet<string>,
  home: ReadonlySet<string>,
): string | null {
  const publish = cellOf(row, 'publish');
  if (publish === 'no') return 'It is marked to stay.';
  if (cellOf(row, 'rights') === '') return 'Nothing says by what right it could be shown.';
  if (!SHOWN.includes(cellOf(row, 'role'))) return 'No page shows pictures of its role.';
  if (home.has(cellOf(row, 'of'))) return 'Its source is marked to stay.';
  const isCopy = copies.has(cellOf(row, 'of')) || isDesk(cellOf(row, 'file'));
  return isCopy && publish !== 'yes'
    ? 'It shows a copy of yours, and is not marked to leave.'
    : null;
}

/** Says that a reader agreed to be thanked, but not under which name. */
export function isBareConsent(cell: string): boolean {
  return /^(yes|y|ok|true|agreed|asked|pending|unknown|\?)$/i.test(cell.trim());
}

/** The name with which a reader wants to be thanked; null without consent. */
export function creditOf(cell: string): string | null {
  const name = cell.trim();
  return /^(|none|no|not decided)$/i.test(name) || isBareConsent(name) ? null : name;
}

function readerStays(rows: readonly DossierRow[]): Stay[] {
  return rows.flatMap((row): Stay[] => {
    const from = cellOf(row, 'from');
    const consents = creditOf(cellOf(row, 'credit')) !== null;
    const why = consents
      ? 'The name to be thanked is in credit.'
      : 'The reader has not agreed to be named.';
    return from === '' ? [] : [stay('corrections.csv', row.row, 'from', 'name', from, why)];
  });
}

/** A number on a slab leads to its owner, and tells whoever copies slabs which number to use. */
function numberStays(ground: LeavingGround): Stay[] {
  const why = 'A certificate’s number leads to its owner, and can be copied onto another slab.';
  return ['sales.csv', 'sightings.csv'].flatMap((file) =>
    ['certificate', 'serial'].flatMap((column) =>
      columnStays(ground, file, column, 'certificate', why),
    ),
  );
}

function priceStays(ground: LeavingGround): Stay[] {
  const why = 'No prices are shown.';
  const sales = rowsIn(ground, 'sales.csv');
  const all =
    sales.length === 0 ? [] : [stay('sales.csv', null, null, 'price', counted(sales, 'row'), why)];
  return [...all, ...columnStays(ground, 'searches.csv', 'cost', 'price', why)];
}

function columnStays(
  ground: LeavingGround,
  file: string,
  column: string,
  what: Harm,
  why: string,
): Stay[] {
  const cells = rowsIn(ground, file).filter((row) => cellOf(row, column) !== '');
  return cells.length === 0 ? [] : [stay(file, null, column, what, counted(cells, 'cell'), why)];
}
