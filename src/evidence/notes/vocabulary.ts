const firsts = new Map<string, number>();

/** A number for a word, or for the first three letters of one, with which some phrase begins. */
export function register(first: string): number {
  const number = firsts.get(first) ?? firsts.size + 1;
  firsts.set(first, number);
  return number;
}

/** The number of a word or a beginning; 0 where no phrase begins so. */
export function numberOf(first: string): number {
  return firsts.get(first) ?? 0;
}
