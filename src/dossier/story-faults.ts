import { knownByIds, type StoryKnown, storyFaults } from '../chronicle/index.ts';
import { rowsOf } from './rows-of.ts';
import type { Dossier, Fault } from './types.ts';

/**
 * Links of the stories of a dossier that name no known source or figure; `row` and `column` are the
 * line and column of the text.
 *
 * @param known what may be named; without it ids alone are looked at
 */
export function storyFaultsIn(dossier: Dossier, known = knownOfIds(dossier)): Fault[] {
  return [...dossier.texts].flatMap(([file, text]) =>
    storyFaults(file, text, known).map(({ line, column, found, expected }) => ({
      file,
      row: line,
      column: String(column),
      found,
      expected,
      message: `${file}, line ${line}, column ${column}: found “${found}”, expected ${expected}. It is shown as written.`,
    })),
  );
}

function knownOfIds(dossier: Dossier): StoryKnown {
  const { printings, sources } = dossier.evidence;
  return knownByIds({
    printings: new Set(printings.map(({ id }) => id)),
    services: new Set(rowsOf(dossier, 'services.csv', (cell) => cell('id'))),
    sources: new Set(sources.filter(({ publish }) => publish !== 'no').map(({ id }) => id)),
  });
}
