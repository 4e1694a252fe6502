/** The phrase from each likelihood ratio on, as ENFSI's guideline of 2015 gives them as an example. */
const PHRASES: readonly (readonly [from: number, phrase: string])[] = [
  [1e6, 'extremely strong support'],
  [1e4, 'very strong support'],
  [1e3, 'strong support'],
  [100, 'moderately strong support'],
  [10, 'moderate support'],
  [2, 'weak support'],
];

/** The verbal equivalent of a likelihood ratio of at least 1; empty where it is below 2 (`enfsi:2015`). */
export function verbal(ratio: number): string {
  return PHRASES.find(([from]) => ratio >= from)?.[1] ?? '';
}

/** A likelihood ratio of two explanations in a sentence; no verdict on either. */
export function sentenceOf(log10Lr: number, between: readonly [string, string]): string {
  const [one, other] = log10Lr >= 0 ? between : [between[1], between[0]];
  const ratio = 10 ** Math.abs(log10Lr);
  const phrase = verbal(ratio);
  if (!phrase) return `What was compared supports neither explanation: ${one}, or ${other}.`;
  return `What was compared gives ${phrase} to one explanation (${one}) over the other (${other}): it is ${rounded(ratio)} times as probable under the first.`;
}

function rounded(ratio: number): string {
  const digits = ratio < 10 ? 1 : 0;
  const scale = 10 ** Math.max(0, Math.floor(Math.log10(ratio)) - 1);
  return ratio < 10 ? ratio.toFixed(digits) : String(Math.round(ratio / scale) * scale);
}
