import { headingForm, type RawLine } from './lines.ts';
import { passageOf } from './passage.ts';
import { ENOUGH, runsIn } from './runs.ts';
import type { Known } from './titles.ts';
import { plain, tokensOf } from './tokens.ts';
import type { NotesContext } from './types.ts';

const MOST_WORDS = 5;

/**
 * Names that a sheet uses for its sources somewhere in a way that leaves no doubt (`per Sheaf`,
 * `Sheaf says`, `(Sheaf)`), and the titles that the dossier knows, in plain letters.
 */
export function namesIn(lines: readonly RawLine[], context: NotesContext): Known {
  const titles = new Set<string>();
  for (const source of context.sources ?? []) {
    titles.add(plain(source.title ?? source.id));
    titles.add(plain(source.id));
  }
  const names = new Set(titles);
  const none = new Set<string>();
  for (const line of lines) {
    if (line.body === '' || headingForm(line.body)) continue;
    for (const run of runsIn(passageOf(line.body, context.language), none)) {
      const words = tokensOf(run.text);
      const named = words.some((word) => /^\p{Lu}/u.test(word.text) || word.kind === 'cjk');
      if (run.score >= ENOUGH + 0.5 && named && words.length <= MOST_WORDS)
        names.add(plain(run.text));
    }
  }
  return Object.assign(names, { titles });
}
