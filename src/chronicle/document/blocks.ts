import type { Block, Column, Words } from '../paper/types.ts';

/** Words in one style. */
export function said(text: string): Words {
  return [{ text }];
}

/** A heading of the third level. */
export function headed(text: string): Block {
  return { is: 'heading', level: 3, text };
}

/** A note in small type. */
export function note(text: string): Block {
  return { is: 'words', as: 'small', words: said(text) };
}

/** A caution beside what it is about. */
export function caution(text: string): Block {
  return { is: 'words', as: 'caution', words: said(text) };
}

/** Columns of a table: heads with their shares of the width, figures to the right. */
export function columnsOf(
  ...columns: readonly (readonly [head: string, share: number | null, figures?: 'figures'])[]
): readonly Column[] {
  return columns.map(([head, share, figures]) => ({
    head,
    share,
    ...(figures === undefined ? {} : { align: 'right' as const }),
  }));
}
