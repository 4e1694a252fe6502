import type { Applied, Change } from './types.ts';

/** A JSON file of the desk that is changed as a whole: what was measured and marked on a copy. */
export function isExamination(name: string): boolean {
  return /^desk\/examinations\/[^/]+\.json$/.test(name);
}

/** What stands in a file of which nothing is known. */
const NOTHING = '{}\n';

/**
 * Changes a file that is one text: `after.text` takes the place of `before.text`. A file that is not
 * there, and one of which nothing is known any more, stand for each other.
 */
export function applyWhole(
  file: string,
  bytes: Uint8Array | undefined,
  changes: readonly Change[],
): Applied {
  const first = bytes ? new TextDecoder().decode(bytes) : NOTHING;
  let text = first;
  const conflicts: Applied['conflicts'][number][] = [];
  for (const change of changes) {
    if ((change.before?.['text'] ?? NOTHING) === text) text = change.after?.['text'] ?? NOTHING;
    else conflicts.push({ change, reason: 'gone', now: { text } });
  }
  const inverse: Change = { file, op: 'replace', before: { text }, after: { text: first } };
  return { bytes: new TextEncoder().encode(text), conflicts, inverse: [inverse] };
}

/** The change that leads from one state of such a file to another. */
export function wholeDifferences(
  file: string,
  from: Uint8Array,
  to: Uint8Array,
): readonly Change[] {
  const [before, after] = [from, to].map((bytes) => ({
    text: bytes.length > 0 ? new TextDecoder().decode(bytes) : NOTHING,
  })) as [{ text: string }, { text: string }];
  return before.text === after.text ? [] : [{ file, op: 'replace', before, after }];
}
