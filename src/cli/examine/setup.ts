import { readFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { type LampSetup, lampSetupOf, type SizeMm } from '../../bench/index.ts';
import { reasonOf } from '../dossier.ts';
import { WrongCall } from '../wrong-call.ts';
import { cardOf } from './job.ts';

/** Pictures of the front under a lamp that was moved, and where it stood. */
export interface Setup extends LampSetup {
  readonly cardMm: SizeMm;
}

/** Reads a setup; its files are found from its own folder. Throws `WrongCall` where it says what is wrong. */
export async function setupIn(file: string): Promise<Setup> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  const { cardMm, pictures, ball } = setupOr(file, text);
  const found = pictures.map((one) => ({ ...one, file: resolve(dirname(file), one.file) }));
  return { cardMm: cardOf(cardMm), pictures: found, ball };
}

function setupOr(file: string, text: string): LampSetup {
  try {
    return lampSetupOf(text);
  } catch (error) {
    if (error instanceof RangeError) throw new WrongCall(`${file}: ${error.message}.`);
    throw error;
  }
}
