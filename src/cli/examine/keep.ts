import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { withMeasured } from '../../bench/index.ts';
import { now, replaceFile } from '../../host/index.ts';
import { reasonOf } from '../dossier.ts';
import { WrongCall } from '../wrong-call.ts';
import type { ExaminationJson } from './answer.ts';

/**
 * Keeps what was measured on a copy in its examination, with the time, beside what hands marked; the
 * file is replaced as a whole. Throws `WrongCall` where what stands there is no JSON object.
 *
 * @returns the file's name within the dossier
 */
export async function keepExamination(
  folder: string,
  copy: string,
  { ms, grade, printing, ...measured }: ExaminationJson,
): Promise<string> {
  const name = `desk/examinations/${copy}.json`;
  const file = join(folder, name);
  const before = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return '{}';
    throw new WrongCall(`${name} cannot be read: ${reasonOf(error)}.`);
  });
  const machine = { measured_at: now(), ...measured, ...(printing ? { screen: printing } : {}) };
  const text = withMeasured(objectIn(before, name), machine, grade);
  await replaceFile(file, new TextEncoder().encode(text));
  return name;
}

function objectIn(text: string, name: string): object {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch {
    found = null;
  }
  if (typeof found === 'object' && found !== null && !Array.isArray(found)) return found;
  throw new WrongCall(`${name} is no JSON object, so nothing is written: mend it or put it away.`);
}
