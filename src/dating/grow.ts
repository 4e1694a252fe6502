/** A typed array twice as long, with the same numbers at its beginning. */
export function widened<T extends Int8Array | Uint8Array | Uint16Array | Int32Array | Float32Array>(
  column: T,
): T {
  const wider = new (column.constructor as new (length: number) => T)(2 * column.length);
  wider.set(column);
  return wider;
}

/** Offsets of lists that are laid end to end. */
export function startsOf(lists: readonly (readonly unknown[])[]): Int32Array {
  const start = new Int32Array(lists.length + 1);
  lists.forEach((list, j) => {
    start[j + 1] = start[j]! + list.length;
  });
  return start;
}
