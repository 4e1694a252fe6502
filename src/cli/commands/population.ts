import { recordsOf } from '../../dossier/index.ts';
import { dayFrom } from '../../evidence/index.ts';
import { populationOf } from '../../population/index.ts';
import { dossierIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { calledIn } from '../report/called.ts';
import { faultsReport } from '../report/faults.ts';
import { populationReport } from '../report/population.ts';
import type { Terminal } from '../terminal.ts';

/**
 * Counts the graded copies of each printing of a dossier, and those that can turn up; faults are
 * listed on standard error and answered by 1. Writes nothing to the folder.
 */
export async function population(
  folder: string,
  { json = false, on }: { json?: boolean; on?: string },
  terminal: Terminal,
): Promise<0 | 1> {
  const asked = on === undefined ? undefined : dayFrom(on);
  const dossier = await dossierIn(folder);
  const { records, faults } = recordsOf(dossier);
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  const { evidence, manifest } = dossier;
  const answer = populationOf(records, evidence, asked ?? records.newestDay);
  if (json) await writeJson(answer, terminal);
  else
    for (const part of populationReport(answer, calledIn(evidence), manifest.title, terminal.width))
      await terminal.write(part);
  return faults.length === 0 ? 0 : 1;
}
