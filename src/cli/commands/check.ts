import {
  correctionFaultsIn,
  readDossier,
  readRevisions,
  recordsOf,
  storyFaultsIn,
} from '../../dossier/index.ts';
import { filesIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { faultsReport } from '../report/faults.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';

/** Lists every fault in a dossier; answers 1 where there is one. */
export async function check(
  folder: string,
  { json = false }: { json?: boolean },
  terminal: Terminal,
): Promise<0 | 1> {
  const files = await filesIn(folder);
  const dossier = await readDossier(files);
  const { evidence } = dossier;
  const frozen = await readRevisions(files);
  const numbers = frozen.revisions.map(({ number }) => number);
  const faults = [
    ...recordsOf(dossier).faults,
    ...storyFaultsIn(dossier),
    ...correctionFaultsIn(dossier, numbers),
    ...frozen.faults,
  ];
  const { printings, sources, claims } = evidence;
  const fine = `No faults: ${counted(printings.length, 'printing')}, ${counted(sources.length, 'source')}, ${counted(claims.length, 'claim')}.\n`;
  if (json) await writeJson({ faults }, terminal);
  else await terminal.write(faults.length === 0 ? fine : faultsReport(faults, terminal.width));
  return faults.length === 0 ? 0 : 1;
}
