import { join } from 'node:path';
import {
  type Account,
  accountOf,
  draftOf,
  fileNameOf,
  LANGUAGES,
  phrasesOf,
  resultsOf,
  type SitePicture,
  siteOf,
  storyValue,
  tellingOf,
} from '../../chronicle/index.ts';
import { accountGroundIn, storyFaultsIn } from '../../dossier/index.ts';
import { dayFrom } from '../../evidence/index.ts';
import { PictureFault, publishedPicture, replaceFolder } from '../../host/index.ts';
import { dossierIn, reasonOf } from '../dossier.ts';
import { progressOn } from '../progress.ts';
import { faultsReport } from '../report/faults.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `publish` was called with. */
export interface PublishOptions {
  /** Drafts are printed where it is missing. */
  readonly out?: string;
  readonly prices?: boolean;
  readonly on?: string;
  readonly seed?: number;
}

/**
 * Writes the site of a dossier's account as a whole into a folder, or prints drafts of its stories.
 * Faults are listed on standard error and answered by 1. Writes nothing to the dossier.
 */
export async function publish(
  folder: string,
  { out, prices = false, on, seed }: PublishOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  const dossier = await dossierIn(folder);
  const ground = accountGroundIn(dossier, on === undefined ? null : dayFrom(on));
  const progress = progressOn(terminal, 'Working out the account');
  const results = resultsOf(ground, {
    prices,
    ...(seed === undefined ? {} : { seed }),
    onProgress: progress.report,
  });
  progress.end();
  const account = accountOf(ground, results);
  const sources = new Set(account.sources.map(({ id }) => id));
  const faults = [
    ...dossier.faults,
    ...storyFaultsIn(dossier, {
      source: (id) => sources.has(id),
      value: (name) => storyValue(name, account, phrasesOf('en')) !== undefined,
    }),
  ];
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  if (out === undefined) await terminal.write(draftsOf(account));
  else await writeSite(account, folder, out, terminal);
  return faults.length === 0 ? 0 : 1;
}

function draftsOf(account: Account): string {
  const telling = tellingOf(account, phrasesOf('en'));
  return account.printings
    .map((printing) => `<!-- story/${printing.id}.md -->\n${draftOf(printing, telling)}`)
    .join('\n');
}

async function writeSite(
  account: Account,
  folder: string,
  out: string,
  terminal: Terminal,
): Promise<void> {
  const files = new Map<string, Uint8Array | string>();
  const pictures = await picturesInto(files, account, folder, terminal);
  const ground = { account, languages: LANGUAGES, pictures, downloads: [] };
  for (const [name, text] of siteOf(ground)) files.set(name, text);
  await replaceFolder(out, files).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${out} cannot be written: ${reasonOf(error)}.`);
  });
  await terminal.write(`${files.size} files written to ${out}; begin at index.html.\n`);
}

/** Widths in pixels at which pictures are published. */
const WIDTHS = [320, 960];

/** Puts the pictures of an account among the files of its site; those that are none are named. */
async function picturesInto(
  files: Map<string, Uint8Array | string>,
  account: Account,
  folder: string,
  terminal: Terminal,
): Promise<ReadonlyMap<string, SitePicture>> {
  const made = new Map<string, SitePicture>();
  const shown = [...account.printings, ...account.counterfeits].flatMap(({ id, pictures }) =>
    pictures.map(({ file }, i) => ({ file, stem: `${fileNameOf(id)}-${i + 1}` })),
  );
  for (const { file, stem } of shown) {
    try {
      const sizes = await publishedPicture(join(folder, file), WIDTHS);
      for (const { width, webp, jpg } of sizes) {
        files.set(`pictures/${stem}-${width}.webp`, webp);
        files.set(`pictures/${stem}-${width}.jpg`, jpg);
      }
      made.set(file, { stem, sizes: sizes.map(({ width, height }) => ({ width, height })) });
    } catch (error) {
      if (!(error instanceof PictureFault)) throw error;
      terminal.say(`${error.message} It is left out.\n`);
    }
  }
  return made;
}
