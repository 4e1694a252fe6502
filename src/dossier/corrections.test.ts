import { expect, it } from 'vitest';
import { correctionFaultsIn, correctionsOf } from './corrections.ts';
import { filesInMemory } from './in-memory.ts';
import { readDossier } from './read.ts';

const HEAD = 'id,received,from,credit,says,about,answer,state,revision\n';

async function dossierWith(...rows: string[]) {
  const files = { 'printings.csv': 'id\nx\n', 'corrections.csv': `${HEAD}${rows.join('\n')}\n` };
  return await readDossier(filesInMemory(files));
}

it('lists states, answers, revisions and consents that cannot be, each where it stands', async () => {
  const dossier = await dossierWith(
    'a,,R,none,It is so.,x,Yes.,accepted,3',
    'b,,R,none,It is so.,x,,declined,',
    'c,,R,yes,It is so.,x,,open,',
    'd,,R,A Reader,It is so.,x,,done,4',
    'e,,R,,It is so.,x,,,second',
  );
  const found = correctionFaultsIn(dossier, [1, 2]);
  expect(found.map(({ row, column, found: what }) => [row, column, what])).toEqual([
    [3, 'answer', ''],
    [4, 'credit', 'yes'],
    [5, 'state', 'done'],
    [5, 'revision', '4'],
    [6, 'revision', 'second'],
  ]);
  expect(found[0]?.message).toBe(
    'corrections.csv, row 3, answer: found nothing, expected an answer, since the state is declined. The rest is used.',
  );
  expect(found[3]?.expected).toBe('a revision from 1 to 3, the next one');
});

it('tells a name only where a reader agreed to one', async () => {
  const dossier = await dossierWith(
    ...['yes', 'Not decided', 'none', '', 'A Reader'].map((credit, i) => `${i},,R,${credit},,,,,`),
  );
  expect(correctionsOf(dossier).map(({ credit }) => credit)).toEqual([
    null,
    null,
    null,
    null,
    'A Reader',
  ]);
});
