import { cuesOf, plannedCut, scriptOf } from '../../chronicle/index.ts';
import { readDossier } from '../../dossier/index.ts';
import { answerTasks, filesOf, replaceFolder } from '../../host/index.ts';
import {
  type Told as Hearing,
  kitFiles,
  siteFiles,
  stillsInto,
  type Worked,
  worked,
  writeKit,
} from '../../press/index.ts';
import type { PressReply, PressTask, PressWord, Told } from './tasks.ts';

/** The account that was worked out last; stills of one after the other need the same. */
let last: { readonly of: string; readonly worked: Worked } | undefined;

answerTasks(async (task: PressTask, tell: (word: PressWord) => void): Promise<PressReply> => {
  const told: Hearing = {
    begins: (step, share) => tell({ step, share }),
    leaves: (left) => tell({ left }),
  };
  const { account } = await workedFor(task, told);
  const { folder } = task;
  if (task.do === 'site') return { files: await siteFiles(folder, account, told) };
  if (task.do === 'stills') {
    const { printing, language } = task;
    const files = new Map<string, Uint8Array | string>();
    const script = scriptOf(account, { order: [printing], language: language as 'en', rate: 160 });
    await stillsInto(files, folder, account, script, told);
    return { files };
  }
  if (task.do === 'publish') {
    const files = await siteFiles(folder, account, told);
    told.begins('Writing the files', 0.98);
    await replaceFolder(task.out, files);
    return { said: `${files.size} files in ${task.out}; begin at index.html.` };
  }
  const { order, language, rate, recording, out } = task;
  const cut = plannedCut(scriptOf(account, { order, language, rate }));
  const options = { recording: recording || null, freezes: true };
  const files = await kitFiles(folder, account, cut, options, told);
  told.begins('Writing the files', 0.98);
  await writeKit(out, files);
  return {
    said: `${files.size} files in ${out}: ${cut.script.scenes.length} scenes, ${(cut.length / 60).toFixed(1)} minutes, ${cuesOf(cut).length} captions; begin with read.html.`,
  };
});

async function workedFor({ folder, version, prices }: Told, told: Hearing): Promise<Worked> {
  const of = `${version} ${prices} ${folder}`;
  if (last?.of === of) return last.worked;
  told.begins('Reading the dossier', 0);
  last = { of, worked: worked(await readDossier(await filesOf(folder)), { prices }, told) };
  return last.worked;
}
