import { withoutStays } from './kept.ts';
import { cellOf, creditOf, isDesk, rowsIn, staysIn } from './stays.ts';
import type { DossierTable, Leaving, LeavingGround, Shown } from './types.ts';
import { type WordsReader, wordsReader } from './words.ts';

/**
 * What a publication of the dossier holds that could harm, and what is kept back from it. What
 * leaves stands first. Nothing reads what pictures show: each that leaves is named, to be looked at.
 */
export function leavingOf(ground: LeavingGround, shown: Shown): readonly Leaving[] {
  const stays = staysIn(ground, shown);
  const tables = withoutStays(ground.tables, stays);
  const read = wordsReader(ground, shown);
  const left = { ...ground, tables };
  return [
    ...texts(ground, read),
    ...tables.flatMap((table) => words(table, read)),
    ...credits(left),
    ...(shown.prices ? prices(left) : []),
    ...pictures(left),
    ...stays.map(({ remains, ...one }) => one),
    ...marks(ground),
  ];
}

function texts({ texts: all }: LeavingGround, read: WordsReader): Leaving[] {
  return [...all].flatMap(([file, text]) =>
    text
      .split('\n')
      .flatMap((line, at) =>
        read(line).map((told) => ({ file, row: at + 1, column: null, leaves: true, ...told })),
      ),
  );
}

function words({ file, rows, words: columns }: DossierTable, read: WordsReader): Leaving[] {
  return rows.flatMap((row) =>
    [...columns].flatMap((column) =>
      read(cellOf(row, column)).map((told) => ({
        file,
        row: row.row,
        column,
        leaves: true,
        ...told,
      })),
    ),
  );
}

/** Names that are printed as thanks. */
function credits(ground: LeavingGround): Leaving[] {
  const readers = rowsIn(ground, 'corrections.csv').flatMap((row) => {
    const found = creditOf(cellOf(row, 'credit'));
    const why = 'The reader is thanked by this name.';
    return found === null ? [] : [named('corrections.csv', row.row, 'credit', found, why)];
  });
  const makers = rowsIn(ground, 'pictures.csv').flatMap((row) => {
    const found = cellOf(row, 'by');
    const why = 'It is named as who took the picture.';
    const nobody = ['', 'none', 'owner', 'seller'].includes(found);
    return nobody ? [] : [named('pictures.csv', row.row, 'by', found, why)];
  });
  return [...readers, ...makers];
}

function named(file: string, row: number, column: string, found: string, why: string): Leaving {
  return { file, row, column, what: 'name', found, leaves: true, why };
}

function prices(ground: LeavingGround): Leaving[] {
  const { length } = rowsIn(ground, 'sales.csv');
  if (length === 0) return [];
  const why = 'Prices are shown.';
  const found = `${length} sales`;
  return [{ file: 'sales.csv', row: null, column: null, what: 'price', found, leaves: true, why }];
}

function pictures(ground: LeavingGround): Leaving[] {
  return rowsIn(ground, 'pictures.csv').map((row) => {
    const found = cellOf(row, 'file');
    const own = isDesk(found);
    const why = own
      ? 'It shows a copy of yours, and is marked to leave; look at it for names and addresses.'
      : 'Nothing here reads what a picture shows: look at it for names and addresses.';
    const what = own ? 'holding' : 'picture';
    return { file: 'pictures.csv', row: row.row, column: null, what, found, leaves: true, why };
  });
}

/** What cameras wrote into pictures that leave: pages show them drawn anew, without it. */
function marks(ground: LeavingGround): Leaving[] {
  const why = 'The picture is written anew for the pages, without what the camera wrote.';
  return ground.marks.map(({ file, what, tag, value }) => {
    const found = `${tag} ${value}`;
    return { file, row: null, column: null, what, found, leaves: false, why };
  });
}
