import type { Change, Merged } from './types.ts';

/** Puts two edits of one table together, row by row. */
export function mergeTables(
  _file: string,
  _base: Uint8Array,
  _ours: Uint8Array,
  _theirs: Uint8Array,
): Merged {
  throw new Error('not written yet');
}

/** The changes that lead from one state of a table to another. */
export function changesBetween(_file: string, _from: Uint8Array, _to: Uint8Array): Change[] {
  throw new Error('not written yet');
}
