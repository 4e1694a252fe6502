/** A probability in per cent that never claims to be certain: `>99 %`, `97 %`, `<1 %`. */
export function percent(p: number): string {
  if (p >= 0.995) return '>99 %';
  if (p <= 0.005) return '<1 %';
  return `${Math.round(p * 100)} %`;
}

/** A number with its noun, in the plural unless it is one. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
