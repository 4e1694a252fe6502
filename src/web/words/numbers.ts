/** A probability as it is printed: two decimals, never a 0 or 1 that no evidence can give. */
export function sayP(p: number): string {
  if (p >= 0.995) return '> 0.99';
  if (p < 0.005) return '< 0.01';
  return p.toFixed(2);
}

/** A count with its noun: `1 claim`, `12 claims`. */
export function count(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

/** A share as "about 97 of 100". */
export function outOfHundred(p: number): string {
  const n = Math.round(p * 100);
  if (n === 100 && p < 1) return 'more than 99 of 100';
  return n === 0 && p > 0 ? 'less than 1 of 100' : `about ${n} of 100`;
}

/** Information in bits. */
export function sayBits(bits: number): string {
  const text = bits < 0.005 ? '< 0.01' : bits.toFixed(2);
  return `${text} ${bits >= 1.005 ? 'bits' : 'bit'}`;
}
