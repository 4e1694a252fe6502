/** A stretch of days as a person says it: 1 day, 3 weeks, 2 months. */
export function sayLength(days: number): string {
  const n = Math.abs(Math.round(days));
  if (n <= 1) return '1 day';
  if (n < 21) return `${n} days`;
  if (n < 84) return `about ${Math.round(n / 7)} weeks`;
  if (n < 700) return `about ${Math.round(n / 30.44)} months`;
  return `about ${Math.round(n / 365.25)} years`;
}
