import type { Block, Column, Words } from '../paper/types.ts';

/** A paragraph. */
export function plain(text: string): Block {
  return { is: 'words', words: [{ text }] };
}

/** A paragraph in small type. */
export function small(text: string): Block {
  return { is: 'words', as: 'small', words: [{ text }] };
}

/** A table of two columns, what is told and what it is; rows without a value are left out. */
export function factTable(rows: readonly (readonly [string, string])[]): Block {
  const columns: readonly Column[] = [
    { head: 'What', share: 1 },
    { head: 'As it is known', share: 3 },
  ];
  const told = rows.filter(([, value]) => value !== '');
  return {
    is: 'table',
    columns,
    rows: told.map(([what, value]): Words[] => [[{ text: what }], [{ text: value }]]),
  };
}
