import { join } from 'node:path';
import { historyOf, type Shown } from '../../chronicle/index.ts';
import { readDossier, readRevisions } from '../../dossier/index.ts';
import { downloadFiles } from '../../press/index.ts';
import { filesIn } from '../dossier.ts';
import { faultsReport } from '../report/faults.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { writeAsked } from '../written.ts';

/** Writes what readers may download of a dossier into a folder; nothing that stays is in it. */
export async function downloads(
  folder: string,
  out: string,
  shown: Shown,
  terminal: Terminal,
): Promise<0 | 1> {
  const files = await filesIn(folder);
  const dossier = await readDossier(files);
  const { revisions, faults } = await readRevisions(files);
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  const sources = dossier.evidence.sources.filter(({ publish }) => publish !== 'no');
  const told = { sources: new Set(sources.map(({ id }) => id)), prices: shown.prices };
  const made = downloadFiles(dossier, shown, historyOf(told, revisions));
  for (const [name, content] of made) await writeAsked(join(out, name), content);
  await terminal.write(`${counted(made.size, 'file')} written to ${out}.\n`);
  return faults.length === 0 ? 0 : 1;
}
