import { open } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { PictureFault } from '../../host/index.ts';
import { dossierIn, reasonOf } from '../dossier.ts';
import { answerOf, type ExaminationJson } from '../examine/answer.ts';
import { cardIn, dpiOf, type Job, type RakingFile } from '../examine/job.ts';
import { answersTo } from '../examine/jobs.ts';
import { keepExamination, keptExamination } from '../examine/keep.ts';
import { ALONE, type Around, type Measured, measured } from '../examine/measure.ts';
import { copyIn, folderAt, lampsIn } from '../examine/of-copy.ts';
import { writeFindings } from '../findings/write.ts';
import { writeJson } from '../json.ts';
import { stepsOn } from '../progress.ts';
import { examinationReport } from '../report/examination.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `examine` was called with. */
export interface ExamineOptions {
  readonly card?: string;
  readonly dpi?: number;
  readonly raking?: readonly string[];
  readonly copy?: string;
  readonly json?: boolean;
  readonly jobs?: string;
  readonly out?: string;
  readonly write?: boolean;
}

/**
 * Measures a copy from its pictures, one by one or a whole folder, or many copies from a file of
 * jobs; answers 1 where a face has no sure outline.
 */
export async function examine(
  front: string | undefined,
  back: string | undefined,
  options: ExamineOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  if (options.jobs !== undefined) return jobsIn(options.jobs, front, terminal);
  const [low] = options.copy === undefined ? (options.raking ?? []).map(rakingIn) : [];
  const first = front ?? low?.file;
  if (first === undefined) throw new WrongCall('A picture of the front is wanted, or --jobs.');
  const keep = options.write ? await keeping(first, options.copy) : null;
  const { job, ...around } = await taskOf(first, back, options);
  const steps = stepsOn(terminal);
  const one = await measuredOr(job, { ...around, say: steps.say });
  steps.end();
  for (const note of one.notes) terminal.say(`${note}\n`);
  const answer = answerOf(one);
  if (options.json) await writeJson(answer, terminal);
  else await terminal.write(examinationReport(one, terminal.width));
  if (keep) terminal.say(`Written: ${await keep(answer)}\n`);
  const { front: face, back: other } = one.examination;
  if (options.out !== undefined) {
    const drawn = [await writeFindings(options.out, 'front', face, one.front)];
    if (other && one.back) drawn.push(await writeFindings(options.out, 'back', other, one.back));
    for (const file of drawn)
      terminal.say(file ? `Drawn: ${file}\n` : 'A face without a size was not drawn.\n');
  }
  return face.trouble || other?.trouble ? 1 : 0;
}

/** How what will be measured is kept; what stands there so far is read before. */
async function keeping(
  folder: string,
  copy: string | undefined,
): Promise<(answer: ExaminationJson) => Promise<string>> {
  if (copy === undefined) throw new WrongCall('--write needs --copy: of which copy is it?');
  const before = await keptExamination(folder, copy);
  return (answer) => keepExamination(folder, copy, before, answer);
}

async function measuredOr(job: Job, around: Around): Promise<Measured> {
  try {
    return await measured(job, around);
  } catch (error) {
    if (error instanceof PictureFault) throw new WrongCall(error.message);
    throw error;
  }
}

/** The pictures of a copy and what is known of it beside them. */
async function taskOf(
  front: string,
  back: string | undefined,
  options: ExamineOptions,
): Promise<{ readonly job: Job } & Omit<Around, 'say'>> {
  const own = {
    cardMm: options.card === undefined ? null : cardIn(options.card),
    dpi: options.dpi === undefined ? null : dpiOf(options.dpi),
    raking: (options.raking ?? []).map(rakingIn),
  };
  const copy =
    options.copy === undefined
      ? await folderAt(front)
      : await copyIn(front, await dossierIn(front), options.copy);
  if (copy === null) return { job: { front, back: back ?? null, ...own }, ...ALONE };
  if (back !== undefined) throw new WrongCall('A folder takes the place of FRONT and BACK.');
  const { photos, told, byHand } = copy;
  const cardMm = own.cardMm ?? copy.cardMm;
  const raking = [...photos.raking.map((file) => ({ file, azimuthDeg: null })), ...own.raking];
  return {
    job: { front: photos.front, back: photos.back, cardMm, dpi: own.dpi, raking },
    lamps: await lampsIn(photos, cardMm),
    extras: photos.extras,
    ...{ told, byHand },
  };
}

/** `PICTURE` or `PICTURE@AZIMUTH`. */
function rakingIn(text: string): RakingFile {
  const match = /^(.+)@(-?\d+(?:\.\d+)?)$/.exec(text);
  return match
    ? { file: match[1] as string, azimuthDeg: Number(match[2]) }
    : { file: text, azimuthDeg: null };
}

async function jobsIn(file: string, front: string | undefined, terminal: Terminal): Promise<0 | 1> {
  if (front !== undefined) throw new WrongCall('--jobs takes the place of FRONT and BACK.');
  const handle = await open(file).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  if (!(await handle.stat()).isFile()) {
    await handle.close();
    throw new WrongCall(`${file} is no file of jobs.`);
  }
  let exit: 0 | 1 = 0;
  for await (const answer of answersTo(handle.readLines(), dirname(resolve(file)))) {
    if ('error' in answer) exit = 1;
    await terminal.write(`${JSON.stringify(answer)}\n`);
  }
  return exit;
}
