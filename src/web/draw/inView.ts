/** Rows `from` (included) to `to` (left out) that have to be in the document. */
export interface Rows {
  readonly from: number;
  readonly to: number;
}

/**
 * Rows of one height that can be seen in a window of `height` pixels whose top lies `top` pixels
 * below the first row (negative above it), with `spare` rows more on either side.
 */
export function rowsInView(
  top: number,
  height: number,
  row: number,
  count: number,
  spare = 12,
): Rows {
  if (!(row > 0)) throw new RangeError(`rowsInView requires a row height above 0, got ${row}`);
  const clamp = (n: number) => Math.max(0, Math.min(count, n));
  return {
    from: clamp(Math.floor(top / row) - spare),
    to: clamp(Math.ceil((top + height) / row) + spare),
  };
}
