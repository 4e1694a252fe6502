import { join } from 'node:path';
import {
  type Account,
  compareRevisions,
  historyOf,
  type Revision,
  revisionText,
  type State,
  stateOf,
  type ToldRevision,
} from '../chronicle/index.ts';
import { type Dossier, leavingGroundIn, revisionName } from '../dossier/index.ts';
import { replaceFile, replaceFolder, sha512 } from '../host/index.ts';
import type { Worked } from './account.ts';
import type { Shelf } from './told.ts';

/** A revision that an account is published as. */
export interface Edition {
  readonly revision: Revision;
  /** It is not frozen yet. */
  readonly isNew: boolean;
  /** Those before it, oldest first. */
  readonly earlier: readonly Revision[];
}

/**
 * The revision that an account would be published as: the last one where nothing changed since, else
 * the next. It is not frozen by this.
 *
 * @param frozen those of the dossier, oldest first
 * @param madeWith program and version
 * @throws RangeError where nothing in the dossier has a day
 */
export function editionOf(
  dossier: Dossier,
  worked: Worked,
  frozen: readonly Revision[],
  madeWith: string,
): Edition {
  const last = frozen.at(-1);
  const now = stateIn(dossier, worked, madeWith);
  if (last !== undefined && isSame(last, now))
    return { revision: last, isNew: false, earlier: frozen.slice(0, -1) };
  const number = (last?.number ?? 0) + 1;
  return { revision: { ...now, number }, isNew: true, earlier: frozen };
}

/** What a proof is a proof of; null where nothing in the dossier has a day. */
export function proofOf(
  dossier: Dossier,
  worked: Worked,
  frozen: readonly Revision[],
  madeWith: string,
): Edition | null {
  return worked.account.asOf === null ? null : editionOf(dossier, worked, frozen, madeWith);
}

/** Digits beyond those that are shown may differ between machines; they make no new revision. */
function isSame(last: Revision, now: State): boolean {
  const same = last.sha512 === now.sha512 && last.madeWith === now.madeWith && last.day === now.day;
  return same && compareRevisions(last, now).figures.length === 0;
}

/**
 * The state of an account that is not frozen, of the day for which it holds.
 *
 * @throws RangeError where nothing in the dossier has a day
 */
export function stateIn(dossier: Dossier, { account, dating }: Worked, madeWith: string): State {
  const day = account.asOf;
  if (day === null) throw new RangeError('Nothing in the dossier has a day: give one with --on.');
  const claims = dating.printings.flatMap((printing) => printing.claims);
  const { tables, texts } = leavingGroundIn(dossier, []);
  return stateOf({
    day,
    madeWith,
    research: { tables, texts, manifest: dossier.documents.get('dossier.json') },
    evidence: dossier.evidence,
    figures: account.figures,
    pRight: new Map(claims.map(({ row, p_right }) => [row, p_right])),
    sha512,
  });
}

/** The history that a site tells, newest first. On a proof what is not frozen has no number. */
export function toldHistory(
  account: Account,
  edition: Edition | null,
  proof: boolean,
): readonly ToldRevision[] {
  if (edition === null) return [];
  const { revision, isNew, earlier } = edition;
  const now = proof && isNew ? { ...revision, number: null } : revision;
  const sources = new Set(account.sources.map(({ id }) => id));
  return historyOf({ sources, prices: account.currency !== null }, [...earlier, now]);
}

/** Freezes a revision in a dossier's folder as a whole, and answers the name of its file. */
export async function keepRevision(folder: string, revision: Revision): Promise<string> {
  const name = revisionName(revision.number);
  await replaceFile(join(folder, name), new TextEncoder().encode(revisionText(revision)));
  return name;
}

/**
 * Puts a site in the place of the one in a folder and freezes its revision, which is done once the
 * site is written beside the earlier one: whatever fails, revision and site of before are whole.
 *
 * @param folder of the dossier
 * @param edition null for a proof, of which nothing is frozen
 * @param fill puts the files of the site on a shelf
 * @throws FolderFault where the folder holds other files
 */
export async function publishInto<T>(
  out: string,
  folder: string,
  edition: Edition | null,
  fill: (shelf: Shelf) => Promise<T>,
): Promise<T> {
  return await replaceFolder(out, async (draft) => {
    const filled = await fill(draft);
    if (edition?.isNew) await keepRevision(folder, edition.revision);
    return filled;
  });
}
