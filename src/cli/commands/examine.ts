import { open } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { PictureFault } from '../../host/index.ts';
import { reasonOf } from '../dossier.ts';
import { answerOf } from '../examine/answer.ts';
import { cardOf, dpiOf, type Job, type RakingFile } from '../examine/job.ts';
import { answersTo } from '../examine/jobs.ts';
import { type Measured, measured } from '../examine/measure.ts';
import { writeJson } from '../json.ts';
import { examinationReport } from '../report/examination.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** What `examine` was called with. */
export interface ExamineOptions {
  readonly card?: string;
  readonly dpi?: number;
  readonly raking?: readonly string[];
  readonly json?: boolean;
  readonly jobs?: string;
}

/** Measures a copy from its pictures, or many copies from a file of jobs; answers 1 where one has no sure outline. */
export async function examine(
  front: string | undefined,
  back: string | undefined,
  options: ExamineOptions,
  terminal: Terminal,
): Promise<0 | 1> {
  if (options.jobs !== undefined) return jobsIn(options.jobs, front, terminal);
  if (front === undefined) throw new WrongCall('A picture of the front is wanted, or --jobs.');
  const one = await measuredOr(jobOf(front, back, options));
  for (const note of one.notes) terminal.say(`${note}\n`);
  if (options.json) await writeJson(answerOf(one), terminal);
  else await terminal.write(examinationReport(one, terminal.width));
  const { front: face, back: other } = one.examination;
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

function jobOf(front: string, back: string | undefined, options: ExamineOptions): Job {
  return {
    front,
    back: back ?? null,
    cardMm: options.card === undefined ? null : cardIn(options.card),
    dpi: options.dpi === undefined ? null : dpiOf(options.dpi),
    raking: (options.raking ?? []).map(rakingIn),
  };
}

function cardIn(text: string) {
  const match = /^(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)$/i.exec(text);
  return cardOf(match ? [Number(match[1]), Number(match[2])] : text);
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
