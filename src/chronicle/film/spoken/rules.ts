/** What is looked for in a text, and how it is said; the groups of the pattern come after the whole. */
export type Rule = readonly [RegExp, (whole: string, ...groups: string[]) => string];

/** The whole number that digits with marks between their groups mean. */
export function wholeOf(text: string): number {
  return Number(text.replace(/\D/g, ''));
}
