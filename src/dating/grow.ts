/** A typed column that grows: numbers are pushed and the used part is read at the end. */
export class Column<T extends Int8Array | Uint8Array | Uint16Array | Int32Array | Float32Array> {
  length = 0;
  private data: T;
  private readonly make: (n: number) => T;

  constructor(make: (n: number) => T) {
    this.make = make;
    this.data = make(1024);
  }

  push(value: number): void {
    if (this.length === this.data.length) {
      const wider = this.make(this.length * 2);
      wider.set(this.data);
      this.data = wider;
    }
    this.data[this.length++] = value;
  }

  done(): T {
    return this.data.subarray(0, this.length) as T;
  }
}

/** Offsets of lists that are laid end to end. */
export function startsOf(lists: readonly (readonly unknown[])[]): Int32Array {
  const start = new Int32Array(lists.length + 1);
  lists.forEach((list, j) => {
    start[j + 1] = start[j]! + list.length;
  });
  return start;
}
