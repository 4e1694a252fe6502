/** Where a key leads from a place in a row of things; null where the key leads nowhere. */
export function stepTo(key: string, from: number, length: number): number | null {
  const last = length - 1;
  if (key === 'ArrowRight' || key === 'ArrowDown') return Math.min(last, from + 1);
  if (key === 'ArrowLeft' || key === 'ArrowUp') return Math.max(0, from - 1);
  if (key === 'Home') return 0;
  return key === 'End' ? last : null;
}
