import { jaroWinkler } from '../../maths/index.ts';

/**
 * How likely a word of a label stands for a word of a printing by its letters alone, 0 to 1: the
 * word itself, with a typing error, cut short, or its consonants. Judgement, no source.
 */
export function likeness(said: string, meant: string): number {
  if (said === meant) return 1;
  const [short, long] = said.length < meant.length ? [said, meant] : [meant, said];
  if (/\d/.test(said) || /\d/.test(meant)) return 0;
  if (short.length >= 4 && long.length - short.length <= 2) {
    const alike = jaroWinkler(said, meant);
    if (alike >= 0.93 || (alike >= 0.88 && short.length >= 5)) return 0.8;
  }
  if (said.charCodeAt(0) !== meant.charCodeAt(0) || long.length < 4) return 0;
  if (long.startsWith(short)) return startOf(short, said === short);
  return said === short && short.length >= 2 ? skeleton(short, long) : 0;
}

/** One word begins the other: an abbreviation, or an ending that the form does not have. */
function startOf(short: string, abbreviated: boolean): number {
  if (short.length >= 4) return 0.8;
  if (short.length === 3) return abbreviated ? 0.7 : 0.4;
  return abbreviated && short.length === 2 ? 0.3 : 0;
}

/** Letters of the word in their order, as `strtr` for `starter`. */
function skeleton(short: string, long: string): number {
  let at = 0;
  let vowels = 0;
  for (const letter of short) {
    at = long.indexOf(letter, at);
    if (at < 0) return 0;
    if (at > 0 && 'aeiou'.includes(letter)) vowels += 1;
    at += 1;
  }
  if (short.length === 2) return 0.2;
  return vowels === 0 ? 0.6 : short.length >= 4 ? 0.4 : 0.25;
}
