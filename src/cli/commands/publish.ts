import { type Account, draftOf, phrasesOf, tellingOf } from '../../chronicle/index.ts';
import { replaceFolder } from '../../host/index.ts';
import { type AccountOptions, siteFiles, type Told, worked } from '../../press/index.ts';
import { dossierIn, reasonOf } from '../dossier.ts';
import { toldOn } from '../progress.ts';
import { faultsReport } from '../report/faults.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `publish` was called with. */
export interface PublishOptions extends AccountOptions {
  /** Drafts are printed where it is missing. */
  readonly out?: string;
}

/**
 * Writes the site of a dossier's account as a whole into a folder, or prints drafts of its stories.
 * Faults are listed on standard error and answered by 1. Writes nothing to the dossier.
 */
export async function publish(
  folder: string,
  { out, ...options }: PublishOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const dossier = await dossierIn(folder);
  const told = toldOn(terminal);
  const { account, storyFaults } = worked(dossier, options, told);
  told.end();
  const faults = [...dossier.faults, ...storyFaults];
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  if (out === undefined) await terminal.write(draftsOf(account));
  else await terminal.write(await siteInto(out, folder, account, told));
  told.end();
  return faults.length === 0 ? 0 : 1;
}

function draftsOf(account: Account): string {
  const telling = tellingOf(account, phrasesOf('en'));
  return account.printings
    .map((printing) => `<!-- story/${printing.id}.md -->\n${draftOf(printing, telling)}`)
    .join('\n');
}

async function siteInto(
  out: string,
  folder: string,
  account: Account,
  told: Told,
): Promise<string> {
  const files = await siteFiles(folder, account, told);
  await replaceFolder(out, files).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${out} cannot be written: ${reasonOf(error)}.`);
  });
  return `${files.size} files written to ${out}; begin at index.html.\n`;
}
