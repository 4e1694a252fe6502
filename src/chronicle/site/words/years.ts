/** Years from one to another after a sign, one of them where both are the same, nothing where none is. */
export function yearRun(
  from: number | undefined,
  to: number | undefined,
  sign: string,
  dash: string,
): string {
  if (from === undefined || to === undefined) return '';
  return from === to ? `${sign}${from}` : `${sign}${from}${dash}${to}`;
}
