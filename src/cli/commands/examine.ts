import { open, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import type { SizeMm } from '../../bench/index.ts';
import { PictureFault } from '../../host/index.ts';
import { dossierIn, reasonOf } from '../dossier.ts';
import { answerOf } from '../examine/answer.ts';
import { cardIn, cardOf, dpiOf, type Job, type RakingFile } from '../examine/job.ts';
import { answersTo } from '../examine/jobs.ts';
import { type Measured, measured } from '../examine/measure.ts';
import { photosIn } from '../examine/photos.ts';
import { writeFindings } from '../findings/write.ts';
import { writeJson } from '../json.ts';
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
  const job = await jobOf(first, back, options);
  if (terminal.watched) terminal.say('Measuring …\r');
  const one = await measuredOr(job);
  for (const note of one.notes) terminal.say(`${note}\n`);
  if (options.json) await writeJson(answerOf(one), terminal);
  else await terminal.write(examinationReport(one, terminal.width));
  const { front: face, back: other } = one.examination;
  if (options.out !== undefined) {
    const drawn = [await writeFindings(options.out, 'front', face, one.front)];
    if (other && one.back) drawn.push(await writeFindings(options.out, 'back', other, one.back));
    for (const file of drawn)
      terminal.say(file ? `Drawn: ${file}\n` : 'A face without a size was not drawn.\n');
  }
  return face.trouble || other?.trouble ? 1 : 0;
}

async function measuredOr(job: Job): Promise<Measured> {
  try {
    return await measured(job);
  } catch (error) {
    if (error instanceof PictureFault) throw new WrongCall(error.message);
    throw error;
  }
}

async function jobOf(
  front: string,
  back: string | undefined,
  options: ExamineOptions,
): Promise<Job> {
  const told = {
    cardMm: options.card === undefined ? null : cardIn(options.card),
    dpi: options.dpi === undefined ? null : dpiOf(options.dpi),
    raking: (options.raking ?? []).map(rakingIn),
  };
  const folder = await folderOf(front, options.copy);
  if (folder === null) return { front, back: back ?? null, ...told };
  if (back !== undefined) throw new WrongCall('A folder takes the place of FRONT and BACK.');
  const photos = await photosIn(folder);
  return {
    front: photos.front,
    back: photos.back,
    cardMm: told.cardMm ?? (options.copy === undefined ? null : await cardOfDossier(front)),
    dpi: told.dpi,
    raking: [...photos.raking.map((file) => ({ file, azimuthDeg: null })), ...told.raking],
  };
}

/** The folder of a copy's pictures; null where a picture is named. */
async function folderOf(front: string, copy: string | undefined): Promise<string | null> {
  if (copy !== undefined) {
    if (!/^[a-z0-9][a-z0-9-]*$/.test(copy)) throw new WrongCall(`${copy} is no id of a copy.`);
    return join(front, 'desk', 'photos', copy);
  }
  const found = await stat(front).catch(() => undefined);
  return found?.isDirectory() ? front : null;
}

async function cardOfDossier(folder: string): Promise<SizeMm | null> {
  const { width_mm: width, height_mm: height } = (await dossierIn(folder)).manifest;
  return width !== null && height !== null ? cardOf([width, height]) : null;
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
  if (!(await handle.stat()).isFile()) throw new WrongCall(`${file} is no file of jobs.`);
  let exit: 0 | 1 = 0;
  for await (const answer of answersTo(handle.readLines(), dirname(resolve(file)))) {
    if ('error' in answer) exit = 1;
    await terminal.write(`${JSON.stringify(answer)}\n`);
  }
  return exit;
}
