import type { Applied, Change } from './types.ts';

/** Makes changes to one table; bytes of rows that no change speaks of stay as they are. */
export function applyChanges(
  _file: string,
  _bytes: Uint8Array | undefined,
  _changes: readonly Change[],
): Applied {
  throw new Error('not written yet');
}
