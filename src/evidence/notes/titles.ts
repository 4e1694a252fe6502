import { textOf } from './names-in-words.ts';
import type { Passage } from './passage.ts';
import { plain, tokensOf } from './tokens.ts';

const LONGEST_TITLE = 10;
/** Names of sources in plain letters; `titles` are those that the dossier knows. */
export interface Known extends ReadonlySet<string> {
  readonly titles?: ReadonlySet<string>;
}

const NONE: ReadonlySet<string> = new Set();
const opening = new WeakMap<ReadonlySet<string>, ReadonlySet<string>>();

/** The first words of the titles that have several. */
function firstWords(titles: ReadonlySet<string>): ReadonlySet<string> {
  const before = opening.get(titles);
  if (before) return before;
  const long = [...titles].filter((name) => name.includes(' '));
  const words = new Set(long.map((name) => tokensOf(name)[0]?.norm ?? ''));
  opening.set(titles, words);
  return words;
}

/** The end of the longest title of several words at a token, whatever those words say. */
export function titleEnd(
  passage: Passage,
  at: number,
  { titles = NONE }: Known,
): number | undefined {
  const { tokens, roles } = passage;
  if (titles.size === 0 || !firstWords(titles).has(tokens[at]!.norm)) return undefined;
  let end: number | undefined;
  for (let to = at + 1; to <= Math.min(at + LONGEST_TITLE, tokens.length); to += 1) {
    if (roles[to - 1] === 'date') break;
    if (to > at + 1 && titles.has(plain(textOf(passage, at, to)))) end = to;
  }
  return end;
}

/** The passage with the words of titles freed of what they say elsewhere. */
export function outsideTitles(
  passage: Passage,
  titles: readonly { readonly from: number; readonly to: number }[],
): Passage {
  if (titles.length === 0) return passage;
  const outside = (span: { readonly from: number; readonly to: number }) =>
    !titles.some((title) => title.from < span.to && span.from < title.to);
  const roles = [...passage.roles];
  for (const { from, to } of titles) roles.fill('free', from, to);
  const [cues, printing] = [passage.cues.filter(outside), passage.printing.filter(outside)];
  return { ...passage, cues, printing, roles };
}
