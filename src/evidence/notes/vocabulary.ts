const firsts = new Map<string, number>();
const unread: (() => void)[] = [];

/** Puts off reading a list of phrases until the first note is cut: most callers read no notes. */
export function readLater(read: () => void): void {
  unread.push(read);
}

/** A number for a word, or for the first three letters of one, with which some phrase begins. */
export function register(first: string): number {
  const number = firsts.get(first) ?? firsts.size + 1;
  firsts.set(first, number);
  return number;
}

/** The number of a word or a beginning; 0 where no phrase begins so. */
export function numberOf(first: string): number {
  if (unread.length > 0) for (const read of unread.splice(0)) read();
  return firsts.get(first) ?? 0;
}
