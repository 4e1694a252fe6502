import { type Account, draftOf, phrasesOf, tellingOf } from '../../chronicle/index.ts';
import { correctionFaultsIn, readDossier, readRevisions } from '../../dossier/index.ts';
import {
  type AccountOptions,
  type Edition,
  madeWith,
  proofOf,
  publishInto,
  publishOn,
  toldHistory,
  worked,
} from '../../press/index.ts';
import { filesIn, notWritten } from '../dossier.ts';
import { toldOn } from '../progress.ts';
import { faultsReport } from '../report/faults.ts';
import { editionIn } from '../revisions/edition.ts';
import type { Terminal } from '../terminal.ts';

/** What `publish` was called with. */
export interface PublishOptions extends AccountOptions {
  /** Drafts are printed where it is missing. */
  readonly out?: string;
  /** Freezes nothing, and the pages say so. */
  readonly proof?: boolean;
}

/**
 * Freezes the next revision of a dossier, where something changed, and writes its site as a whole
 * into a folder; or prints drafts of its stories. Faults are listed on standard error and answered
 * by 1.
 */
export async function publish(
  folder: string,
  { out, proof = false, ...options }: PublishOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const files = await filesIn(folder);
  const dossier = await readDossier(files);
  const frozen = await readRevisions(files);
  const told = toldOn(terminal);
  const work = worked(dossier, options, told);
  told.end();
  const numbers = frozen.revisions.map(({ number }) => number);
  const faults = [
    ...dossier.faults,
    ...work.storyFaults,
    ...correctionFaultsIn(dossier, numbers),
    ...frozen.faults,
  ];
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  if (out === undefined) await terminal.write(draftsOf(work.account));
  else {
    const edition = proof
      ? proofOf(dossier, work, frozen.revisions, madeWith())
      : editionIn(dossier, work, frozen);
    const history = toldHistory(work.account, edition, proof);
    const kept = proof ? null : edition;
    const published = { history, documents: true, earlier: out };
    const written = await publishInto(out, folder, kept, (shelf) =>
      publishOn(shelf, folder, { dossier, account: work.account }, published, told),
    ).catch(notWritten(out));
    told.end();
    await terminal.write(
      `${frozenWords(kept)} ${written} files written to ${out}; begin at index.html.\n`,
    );
  }
  return faults.length === 0 ? 0 : 1;
}

function draftsOf(account: Account): string {
  const telling = tellingOf(account, phrasesOf('en'));
  return account.printings
    .map((printing) => `<!-- story/${printing.id}.md -->\n${draftOf(printing, telling)}`)
    .join('\n');
}

function frozenWords(edition: Edition | null): string {
  if (edition === null) return 'A proof: no revision is frozen.';
  const { isNew, revision } = edition;
  return isNew
    ? `Revision ${revision.number} of ${revision.day} is frozen.`
    : `Nothing changed since revision ${revision.number} of ${revision.day}.`;
}
