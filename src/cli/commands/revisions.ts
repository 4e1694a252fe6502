import { compareRevisions, type Revision } from '../../chronicle/index.ts';
import { type Dossier, readDossier, readRevisions } from '../../dossier/index.ts';
import { keepRevision, type Worked, worked } from '../../press/index.ts';
import { filesIn, reasonOf } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { toldOn } from '../progress.ts';
import { faultsReport } from '../report/faults.ts';
import { differenceReport, revisionsReport } from '../report/revisions.ts';
import { editionIn, type ReadRevisions, stateNow } from '../revisions/edition.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `revisions` was called with. */
export interface RevisionsOptions {
  readonly freeze?: boolean;
  readonly on?: string;
  readonly json?: boolean;
}

/** The dossier as it stands, with what an account of it leads to. */
type Now = (prices: boolean) => Promise<readonly [Dossier, Worked]>;

/**
 * Lists the revisions of a dossier, compares two of them (`now`: the dossier as it stands), or
 * freezes the next one. Broken revision files are listed on standard error and answered by 1.
 */
export async function revisions(
  folder: string,
  names: readonly [string?, string?],
  { freeze = false, on, json = false }: RevisionsOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const files = await filesIn(folder);
  const frozen = await readRevisions(files);
  if (frozen.faults.length > 0) terminal.say(faultsReport(frozen.faults, terminal.width));
  const now: Now = async (prices) => {
    const dossier = await readDossier(files);
    const told = toldOn(terminal);
    const work = worked(dossier, { prices, ...(on === undefined ? {} : { on }) }, told);
    told.end();
    return [dossier, work];
  };
  if (freeze && names[0] !== undefined)
    throw new WrongCall('--freeze takes no revisions to compare.');
  if (freeze) await freezeNext(folder, frozen, now, terminal);
  else if (names[0] === undefined) await list(frozen.revisions, json, terminal);
  else await compare([names[0], names[1] ?? 'now'], frozen.revisions, now, json, terminal);
  return frozen.faults.length === 0 ? 0 : 1;
}

async function list(all: readonly Revision[], json: boolean, terminal: Terminal): Promise<void> {
  if (json) await writeJson({ revisions: all.map(headOf) }, terminal);
  else await terminal.write(revisionsReport(all, terminal.width));
}

function headOf({ number, day, sha512: hash, madeWith, figures, claims }: Revision): object {
  return { number, day, sha512: hash, madeWith, figures: figures.length, claims: claims.length };
}

async function compare(
  [from, to]: readonly [string, string],
  all: readonly Revision[],
  now: Now,
  json: boolean,
  terminal: Terminal,
): Promise<void> {
  const before = numbered(all, from);
  const after = to === 'now' ? stateNow(...(await now(tellsPrices(before)))) : numbered(all, to);
  const difference = compareRevisions(before, after);
  if (json) return await writeJson(difference, terminal);
  for (const part of differenceReport(difference, terminal.width)) await terminal.write(part);
}

function numbered(all: readonly Revision[], name: string): Revision {
  const found = all.find(({ number }) => String(number) === name);
  if (found) return found;
  const there = all.length === 0 ? 'none is frozen yet' : `there are 1 to ${all.length}`;
  throw new WrongCall(`There is no revision ${name}: ${there}.`);
}

/** Whether it was published with prices; what follows it is taken likewise. */
function tellsPrices({ figures }: Revision): boolean {
  return figures.some(({ value }) => value.is === 'price');
}

async function freezeNext(
  folder: string,
  frozen: ReadRevisions,
  now: Now,
  terminal: Terminal,
): Promise<void> {
  const last = frozen.revisions.at(-1);
  const edition = editionIn(...(await now(last !== undefined && tellsPrices(last))), frozen);
  const { isNew, revision } = edition;
  if (!isNew) {
    await terminal.write(`Nothing changed since revision ${revision.number}; none is frozen.\n`);
    return;
  }
  const name = await keepRevision(folder, revision).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`The revision cannot be written: ${reasonOf(error)}.`);
  });
  await terminal.write(`Revision ${revision.number} of ${revision.day} is frozen in ${name}.\n`);
}
