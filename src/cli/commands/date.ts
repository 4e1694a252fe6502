import { date as dateEvidence } from '../../dating/index.ts';
import { dossierIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { progressOn } from '../progress.ts';
import { calledIn } from '../report/called.ts';
import { datingReport } from '../report/dating.ts';
import { faultsReport } from '../report/faults.ts';
import type { Terminal } from '../terminal.ts';

/**
 * Dates the printings of a dossier by what of it can be used; faults are listed on standard error
 * and answered by 1. Writes nothing to the folder.
 */
export async function date(
  folder: string,
  { json = false, seed }: { json?: boolean; seed?: number },
  terminal: Terminal,
): Promise<0 | 1> {
  const { evidence, faults, manifest } = await dossierIn(folder);
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  const progress = progressOn(terminal, 'Dating');
  const dating = dateEvidence(evidence, {
    ...(seed === undefined ? {} : { seed }),
    onProgress: progress.report,
  });
  progress.end();
  if (json) await writeJson(dating, terminal);
  else
    for (const part of datingReport(dating, calledIn(evidence), manifest.title, terminal.width))
      await terminal.write(part);
  return faults.length === 0 ? 0 : 1;
}
