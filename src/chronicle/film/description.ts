import type { Account } from '../account/types.ts';
import { chapterLines, chaptersOf } from './chapters.ts';
import type { Cut } from './types.ts';

/**
 * The text under a film: its title, the day that its figures hold for, the chapters with their
 * times, and the sources that its printings rest on, each once, as the dossier cites them.
 */
export function descriptionOf(cut: Cut, account: Account): string {
  const { title, asOf, scenes } = cut.script;
  const told = new Set(scenes.map(({ id }) => id));
  const used = new Set(
    account.printings
      .filter(({ id }) => told.has(id))
      .flatMap(({ release }) => release.claims.map(({ source }) => source)),
  );
  const sources = account.sources
    .filter(({ id }) => used.has(id))
    .map(({ title: called, citation, url }) =>
      [citation ?? called, url ?? ''].filter((part) => part !== '').join(' '),
    );
  return [
    title,
    ...(asOf === null ? [] : [`Figures as of ${asOf}.`]),
    ['Chapters', ...chapterLines(chaptersOf(cut))].join('\n'),
    ['Sources', ...sources.map((source) => `- ${source}`)].join('\n'),
  ]
    .join('\n\n')
    .concat('\n');
}
