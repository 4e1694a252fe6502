import { recordsOf } from '../../dossier/index.ts';
import { dayFrom } from '../../evidence/index.ts';
import { boundClaimsOf, letterTo, populationOf } from '../../population/index.ts';
import { dossierIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { calledIn } from '../report/called.ts';
import { faultsReport } from '../report/faults.ts';
import { populationReport } from '../report/population.ts';
import { wrapped } from '../report/width.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';
import { addReport } from './add-report.ts';
import { boundClaims } from './bound-claims.ts';

interface Options {
  readonly json?: boolean;
  readonly on?: string;
  readonly add?: string;
  readonly service?: string;
  readonly asOf?: string;
  readonly write?: boolean;
  readonly letter?: boolean;
  readonly claims?: boolean;
}

/**
 * Counts the graded copies of each printing of a dossier, and those that can turn up; faults are
 * listed on standard error and answered by 1. Writes nothing, but a report or claims that are added
 * with `--write`.
 */
export async function population(
  folder: string,
  options: Options,
  terminal: Terminal,
): Promise<0 | 1> {
  const { json = false, on, add, service } = options;
  const dossier = await dossierIn(folder);
  const { records, faults } = recordsOf(dossier);
  const one = service === undefined ? undefined : records.services.find(({ id }) => id === service);
  if (service !== undefined && one === undefined)
    throw new WrongCall(
      `${service} is no service of the dossier: services.csv has none of that id.`,
    );
  if (add !== undefined) return addReport(folder, dossier, one, add, options, terminal);
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  const { evidence, manifest } = dossier;
  const answer = populationOf(
    records,
    evidence,
    on === undefined ? records.newestDay : dayFrom(on),
  );
  const called = calledIn(evidence);
  if (options.claims)
    return await boundClaims(
      folder,
      boundClaimsOf(answer, evidence),
      options,
      called.printing,
      terminal,
    );
  if (options.letter) {
    if (one === undefined) throw new WrongCall('--letter needs --service: to whom is it?');
    const letter = letterTo(one.id, one.title ?? one.id, answer, evidence, called.printing);
    await terminal.write(letter === null ? NOTHING : folded(letter, terminal.width));
  } else if (json) await writeJson(answer, terminal);
  else
    for (const part of populationReport(answer, called, manifest.title, terminal.width))
      await terminal.write(part);
  return faults.length === 0 ? 0 : 1;
}

const NOTHING = 'Nothing was found that this service would be asked to mend.\n';

function folded(text: string, width: number): string {
  return text
    .split('\n')
    .flatMap((line) => (line === '' ? [''] : wrapped(line, width)))
    .join('\n');
}
