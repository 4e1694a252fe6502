import type { Passage } from './passage.ts';
import type { Run } from './runs.ts';
import { plain } from './tokens.ts';
import { FILLERS, SAYS } from './words/source-words.ts';

const fillers = new Set(Object.values(FILLERS).flatMap((row) => row.split(' ').map(plain)));
const verbs = new Set(
  Object.values(SAYS)
    .flatMap((row) => row.split('|').map(plain))
    .filter((v) => !v.includes(' ')),
);

/** The words of one line of a passage that were not understood, in their order. */
export function leftOver(passage: Passage, sources: readonly Run[], line: number): string {
  const named = new Uint8Array(passage.tokens.length);
  for (const run of sources) named.fill(1, run.from, run.to);
  const kept: string[] = [];
  let end = -1;
  passage.tokens.forEach((token, at) => {
    if (token.line !== line || (passage.roles[at] !== 'free' && passage.roles[at] !== 'number'))
      return;
    if (named[at] || (token.kind === 'sym' && end !== token.start)) return;
    if (token.kind === 'sym' && passage.boundaries[at] !== 'none') return;
    if (token.kind === 'word' && (fillers.has(token.norm) || verbs.has(token.norm))) return;
    if (end === token.start && kept.length > 0) kept[kept.length - 1] += token.text;
    else kept.push(token.text);
    end = token.end;
  });
  return kept.join(' ');
}
