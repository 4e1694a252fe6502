/** Limits that hold before anything is decoded, in bytes. */
export const LIMITS = {
  table: 512 * 2 ** 20,
  row: 2 ** 20,
  document: 16 * 2 ** 20,
  text: 4 * 2 ** 20,
} as const;

/** Columns of one table. */
export const MOST_COLUMNS = 1000;

/** A size for people. */
export function sizeInWords(bytes: number): string {
  return `${bytes / 2 ** 20} MB`;
}
