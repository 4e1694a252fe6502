/** A stretch of a sentence; `marked` words are drawn with the marker pen. */
export interface Stretch {
  readonly text: string;
  readonly marked: boolean;
}

/** Splits sentences whose deciding words stand between asterisks; a lone asterisk stays one. */
export function stretches(why: string): readonly Stretch[] {
  const found: Stretch[] = [];
  let at = 0;
  for (const match of why.matchAll(/\*([^*]+)\*/g)) {
    if (match.index > at) found.push({ text: why.slice(at, match.index), marked: false });
    found.push({ text: match[1] ?? '', marked: true });
    at = match.index + match[0].length;
  }
  if (at < why.length) found.push({ text: why.slice(at), marked: false });
  return found;
}
