/**
 * What two ways of writing a value must share to be the same value: Unicode compatibility forms,
 * case and white space do not count. `14`, `１４` and ` 14 ` are one value; `14` and `014` are two.
 */
export function keyOf(value: string): string {
  return value.normalize('NFKC').toLowerCase().normalize('NFKC').trim().replace(/\s+/gu, ' ');
}
