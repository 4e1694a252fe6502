import type { DossierRow } from '../leaving/types.ts';
import { oldCounts, oldPrices } from './old.ts';
import type { Missing, MissingGround } from './types.ts';

/**
 * What an account still lacks that a reader would look for, as a list to work through: each with
 * where it can be mended. What stays at home lacks nothing. The order is that of `LACKS`.
 */
export function missingIn(ground: MissingGround): readonly Missing[] {
  return [
    ...ground.links.map(
      ({ file, row, found, expected }): Missing => ({
        ...{ lack: 'link', of: storyOf(file), file, row, column: null },
        found: `“${found}”; expected ${expected}`,
      }),
    ),
    ...unanswered(ground),
    ...unseen(ground),
    ...untold(ground),
    ...unplaced(ground),
    ...uncited(ground),
    ...oldCounts(ground),
    ...oldPrices(ground),
  ];
}

function storyOf(file: string): string {
  return file.replace(/^story\/(.*)\.md$/, '$1');
}

function unanswered({ tables }: MissingGround): Missing[] {
  return rowsOf(tables, 'corrections.csv').flatMap(({ row, cells }) => {
    if ((cells.answer ?? '').trim() !== '') return [];
    const found = `“${cells.says ?? ''}”`;
    const of = cells.id ?? '';
    return [{ lack: 'answer', of, found, file: 'corrections.csv', row, column: 'answer' }];
  });
}

/** Printings of which no picture may be shown; where one waits for its rights, that is said. */
function unseen({ account, tables }: MissingGround): Missing[] {
  const shown = new Set(account.pictures.map(({ of }) => of));
  const dark = account.evidence.printings.filter(({ id }) => !shown.has(id));
  const rows = rowsOf(tables, 'pictures.csv');
  const pictures = dark.flatMap(({ id }): Missing[] => {
    if (rows.some((one) => waitsFor(id, one))) return [];
    const found = 'no picture that may be shown';
    return [{ lack: 'picture', of: id, found, file: 'pictures.csv', row: null, column: null }];
  });
  const rights = dark.flatMap(({ id }) =>
    rows
      .filter((one) => waitsFor(id, one))
      .map(({ row, cells }): Missing => {
        const found = cells.file ?? '';
        return { lack: 'rights', of: id, found, file: 'pictures.csv', row, column: 'rights' };
      }),
  );
  return [...pictures, ...rights];
}

function waitsFor(id: string, { cells }: DossierRow): boolean {
  return cells.of === id && (cells.rights ?? '') === '' && cells.publish !== 'no';
}

function untold({ account: { evidence, stories } }: MissingGround): Missing[] {
  return ['index', ...evidence.printings.map(({ id }) => id)].flatMap((of): Missing[] => {
    const file = `story/${of}.md`;
    if ((stories.get(file) ?? '').trim() !== '') return [];
    return [{ lack: 'story', of, found: `no ${file}`, file, row: null, column: null }];
  });
}

function unplaced({ account: { evidence } }: MissingGround): Missing[] {
  const home = new Set(evidence.sources.filter((one) => one.publish === 'no').map(({ id }) => id));
  return evidence.claims.flatMap((claim): Missing[] => {
    const { row, source, property, value, locator = '', printings, product = '' } = claim;
    if (locator !== '' || home.has(source)) return [];
    const found = `${property} ${value} of ${printings.join(' or ') || product}`;
    return [{ lack: 'locator', of: source, found, file: 'claims.csv', row, column: 'locator' }];
  });
}

function uncited({ tables }: MissingGround): Missing[] {
  const rows = rowsOf(tables, 'sources.csv').filter(({ cells }) => cells.publish !== 'no');
  const lacking = (lack: 'citation' | 'read', column: string, those: readonly DossierRow[]) =>
    those
      .filter(({ cells }) => (cells[column] ?? '') === '')
      .map(({ row, cells: { id = '', title = '', url = '' } }): Missing => {
        const found = lack === 'read' ? url : title || id;
        return { lack, of: id, found, file: 'sources.csv', row, column };
      });
  const pages = rows.filter(({ cells }) => (cells.url ?? '') !== '');
  return [...lacking('citation', 'citation', rows), ...lacking('read', 'accessed', pages)];
}

function rowsOf(tables: MissingGround['tables'], name: string): readonly DossierRow[] {
  return tables.find(({ file }) => file === name)?.rows ?? [];
}
