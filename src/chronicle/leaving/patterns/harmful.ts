import { addressesIn } from './address.ts';
import { emailsIn } from './email.ts';
import type { Found } from './found.ts';
import { telephonesIn } from './telephone.ts';

/** E-mail addresses, telephone numbers and addresses in a text, in order, the longer of two that overlap. */
export function harmfulIn(text: string): readonly Found[] {
  const all = [...emailsIn(text), ...telephonesIn(text), ...addressesIn(text)];
  const longest = all.sort((a, b) => b.text.length - a.text.length || a.at - b.at);
  const kept: Found[] = [];
  for (const one of longest) if (!kept.some((other) => overlaps(one, other))) kept.push(one);
  return kept.sort((a, b) => a.at - b.at);
}

function overlaps(a: Found, b: Found): boolean {
  return a.at < b.at + b.text.length && b.at < a.at + a.text.length;
}
