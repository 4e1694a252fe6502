import { join } from 'node:path';
import {
  compareRevisions,
  type FreezeGround,
  freeze,
  type Revision,
  releaseFigures,
  revisionText,
  type State,
} from '../../chronicle/index.ts';
import { date } from '../../dating/index.ts';
import {
  type Dossier,
  leavingGroundIn,
  newestDay,
  readDossier,
  readRevisions,
  revisionName,
} from '../../dossier/index.ts';
import { isoOf } from '../../evidence/index.ts';
import { sha512 } from '../../host/index.ts';
import { filesIn } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { progressOn } from '../progress.ts';
import { faultsReport } from '../report/faults.ts';
import { differenceReport, revisionsReport } from '../report/revisions.ts';
import type { Terminal } from '../terminal.ts';
import { version } from '../version.ts';
import { writeAsked } from '../written.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `revisions` was called with. */
export interface RevisionsOptions {
  readonly freeze?: boolean;
  readonly on?: string;
  readonly json?: boolean;
}

/**
 * Lists the revisions of a dossier, compares two of them (`now`: the dossier as it stands), or
 * freezes the next one. Broken revision files are listed on standard error and answered by 1.
 */
export async function revisions(
  folder: string,
  names: readonly [string?, string?],
  { freeze: freezes = false, on, json = false }: RevisionsOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const files = await filesIn(folder);
  const read = await readRevisions(files);
  if (read.faults.length > 0) terminal.say(faultsReport(read.faults, terminal.width));
  const now = async (number: number) =>
    stateOf(await readDossier(files), number, on ?? null, terminal);
  if (freezes) {
    if (names[0] !== undefined) throw new WrongCall('--freeze takes no revisions to compare.');
    if (read.faults.length > 0)
      throw new WrongCall('Nothing is frozen while a revision is broken.');
    await freezeNext(folder, read.revisions, now, terminal);
  } else if (names[0] === undefined) {
    if (json) await writeJson({ revisions: read.revisions.map(headOf) }, terminal);
    else await terminal.write(revisionsReport(read.revisions, terminal.width));
  } else {
    const [from, to = 'now'] = names as [string, string?];
    const last = to === 'now' ? { ...(await now(0)), number: null } : numbered(read.revisions, to);
    const difference = compareRevisions(numbered(read.revisions, from), last);
    if (json) await writeJson(difference, terminal);
    else
      for (const part of differenceReport(difference, terminal.width)) await terminal.write(part);
  }
  return read.faults.length === 0 ? 0 : 1;
}

function headOf({ number, day, sha512: hash, madeWith, figures, claims }: Revision): object {
  return { number, day, sha512: hash, madeWith, figures: figures.length, claims: claims.length };
}

function numbered(all: readonly Revision[], name: string): State & Revision {
  const found = all.find(({ number }) => String(number) === name);
  if (found) return found;
  const there = all.length === 0 ? 'none is frozen yet' : `there are 1 to ${all.length}`;
  throw new WrongCall(`There is no revision ${name}: ${there}.`);
}

async function freezeNext(
  folder: string,
  before: readonly Revision[],
  now: (number: number) => Promise<Revision>,
  terminal: Terminal,
): Promise<void> {
  const last = before.at(-1);
  const next = await now((last?.number ?? 0) + 1);
  if (last?.sha512 === next.sha512 && last.madeWith === next.madeWith) {
    await terminal.write(`Nothing changed since revision ${last.number}; none is frozen.\n`);
    return;
  }
  const name = revisionName(next.number);
  await writeAsked(join(folder, name), revisionText(next));
  await terminal.write(`Revision ${next.number} of ${next.day} is frozen in ${name}.\n`);
}

async function stateOf(
  dossier: Dossier,
  number: number,
  on: string | null,
  terminal: Terminal,
): Promise<Revision> {
  const { evidence } = dossier;
  const newest = newestDay(dossier);
  const day = on ?? (newest === null ? null : isoOf(newest));
  if (day === null) throw new WrongCall('Nothing in the dossier has a day: give one with --on.');
  const progress = progressOn(terminal, 'Dating');
  const dating = date(evidence, { seed: 1, onProgress: progress.report });
  progress.end();
  const claims = dating.printings.flatMap((printing) => printing.claims);
  const { tables, texts } = leavingGroundIn(dossier, []);
  const ground: FreezeGround = {
    number,
    day,
    madeWith: `Printlore ${version()}`,
    research: { tables, texts, manifest: dossier.documents.get('dossier.json') },
    evidence,
    figures: releaseFigures(evidence, dating, day),
    pRight: new Map(claims.map(({ row, p_right }) => [row, p_right])),
    sha512,
  };
  return freeze(ground);
}
