import { cuesOf, plannedCut, scriptOf } from '../../chronicle/index.ts';
import { type Dossier, readDossier, readRevisions } from '../../dossier/index.ts';
import { answerTasks, filesOf } from '../../host/index.ts';
import {
  documentViews,
  type Edition,
  editionOf,
  type Files,
  filmInto,
  type Told as Hearing,
  madeWith,
  proofOf,
  publishInto,
  publishOn,
  siteFiles,
  stillViews,
  toldHistory,
  type Worked,
  worked,
} from '../../press/index.ts';
import type { PressReply, PressTask, PressWord, Told } from './tasks.ts';

type Task<Do extends PressTask['do']> = Extract<PressTask, { readonly do: Do }>;

interface Account {
  readonly dossier: Dossier;
  readonly worked: Worked;
}

/** What was worked out last; stills of one printing after the other need the same. */
let last: { readonly of: string; readonly account: Account } | undefined;

answerTasks(async (task: PressTask, tell: (word: PressWord) => void): Promise<PressReply> => {
  const told: Hearing = {
    begins: (step, share) => tell({ step, share }),
    leaves: (left) => tell({ left }),
  };
  const account = await accountFor(task, told);
  switch (task.do) {
    case 'site':
      return { files: await preview(task.folder, account, told) };
    case 'documents':
      return { files: await documents(task, account, told) };
    case 'stills':
      return { files: await stills(task, account, told) };
    case 'publish':
      return { said: await publish(task, account, told) };
    case 'film':
      return { said: await film(task, account, told) };
  }
});

async function accountFor({ folder, version, prices }: Told, told: Hearing): Promise<Account> {
  const of = `${version} ${prices} ${folder}`;
  if (last?.of === of) return last.account;
  told.begins('Reading the dossier', 0);
  const dossier = await readDossier(await filesOf(folder));
  last = { of, account: { dossier, worked: worked(dossier, { prices }, told) } };
  return last.account;
}

async function preview(folder: string, made: Account, told: Hearing): Promise<Files> {
  const {
    dossier,
    worked: { account },
  } = made;
  const history = toldHistory(account, await editionFor(folder, made, true), true);
  return await siteFiles(folder, { dossier, account }, history, told);
}

async function documents(
  { folder, language }: Task<'documents'>,
  made: Account,
  told: Hearing,
): Promise<Files> {
  const {
    dossier,
    worked: { account },
  } = made;
  const [revision = null] = toldHistory(account, await editionFor(folder, made, true), true);
  return await documentViews(folder, { dossier, account, revision }, language, told);
}

async function stills(
  { folder, printing, language }: Task<'stills'>,
  { worked: { account } }: Account,
  told: Hearing,
): Promise<Files> {
  const script = scriptOf(account, { order: [printing], language, rate: 160 });
  return await stillViews(folder, account, script, told);
}

async function publish(
  { folder, out, proof }: Task<'publish'>,
  made: Account,
  told: Hearing,
): Promise<string> {
  const {
    dossier,
    worked: { account },
  } = made;
  const edition = await editionFor(folder, made, proof);
  const history = toldHistory(account, edition, proof);
  const published = { history, documents: true, earlier: out };
  const frozen = proof ? null : edition;
  const files = await publishInto(out, folder, frozen, (shelf) =>
    publishOn(shelf, folder, { dossier, account }, published, told),
  );
  return `${editionWords(frozen)} ${files} files in ${out}; begin with index.html.`;
}

async function editionFor(
  folder: string,
  account: Account,
  proof: boolean,
): Promise<Edition | null> {
  const { revisions, faults } = await readRevisions(await filesOf(folder));
  if (proof) return proofOf(account.dossier, account.worked, revisions, madeWith());
  const [broken] = faults;
  if (broken) throw new RangeError(`a revision is broken. ${broken.message}`);
  if (account.worked.account.asOf === null)
    throw new RangeError(
      'nothing in the dossier has a day, which a revision must have. Publish a proof, or say when a source was read.',
    );
  return editionOf(account.dossier, account.worked, revisions, madeWith());
}

function editionWords(edition: Edition | null): string {
  if (edition === null) return 'A proof, of which no revision is frozen:';
  const { isNew, revision } = edition;
  return isNew
    ? `Revision ${revision.number} is frozen:`
    : `Nothing changed since revision ${revision.number}:`;
}

async function film(
  { folder, out, order, language, rate, recording }: Task<'film'>,
  { worked: { account } }: Account,
  told: Hearing,
): Promise<string> {
  const cut = plannedCut(scriptOf(account, { order, language, rate }));
  const options = { recording: recording || null, freezes: true };
  const files = await filmInto(out, folder, account, cut, options, told);
  const scenes = `${cut.script.scenes.length} scenes, ${(cut.length / 60).toFixed(1)} minutes, ${cuesOf(cut).length} captions`;
  return `${files.length} files in ${out}: ${scenes}; begin with read.html.`;
}
