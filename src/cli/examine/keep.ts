import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { withMeasured } from '../../bench/index.ts';
import { now, replaceFile } from '../../host/index.ts';
import { reasonOf } from '../dossier.ts';
import { WrongCall } from '../wrong-call.ts';
import type { ExaminationJson } from './answer.ts';

const nameOf = (copy: string) => `desk/examinations/${copy}.json`;

/** What is kept of a copy's examination so far. Throws `WrongCall` where that is no JSON object. */
export async function keptExamination(folder: string, copy: string): Promise<object> {
  const name = nameOf(copy);
  const text = await readFile(join(folder, name), 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return '{}';
    throw new WrongCall(`${name} cannot be read: ${reasonOf(error)}.`);
  });
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    found = null;
  }
  if (typeof found === 'object' && found !== null && !Array.isArray(found)) return found;
  throw new WrongCall(`${name} is no JSON object, so nothing is written: mend it or put it away.`);
}

/**
 * Keeps what was measured on a copy, with the time, beside what is kept of it so far; the file is
 * replaced as a whole.
 *
 * @returns the file's name within the dossier
 */
export async function keepExamination(
  folder: string,
  copy: string,
  before: object,
  { ms, grade, printing, ...measured }: ExaminationJson,
): Promise<string> {
  const name = nameOf(copy);
  const machine = { measured_at: now(), ...measured, ...(printing ? { screen: printing } : {}) };
  const text = withMeasured(before, machine, grade);
  await replaceFile(join(folder, name), new TextEncoder().encode(text));
  return name;
}
