/** A column of numbers that grows; one kind of array, so that pushing stays fast. */
export class Column {
  length = 0;
  private data = new Float64Array(1024);

  push(value: number): void {
    if (this.length === this.data.length) {
      const wider = new Float64Array(this.length * 2);
      wider.set(this.data);
      this.data = wider;
    }
    this.data[this.length++] = value;
  }

  /** The numbers pushed, for a typed array to be made of. */
  done(): Float64Array {
    return this.data.subarray(0, this.length);
  }
}

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
