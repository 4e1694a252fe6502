import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { replaceFile } from '../host/index.ts';
import { reasonOf } from './dossier.ts';
import { WrongCall } from './wrong-call.ts';

/** Writes a file that was asked for, as a whole, its folder too. Throws `WrongCall` where it cannot. */
export async function writeAsked(file: string, content: Uint8Array | string): Promise<void> {
  try {
    await mkdir(dirname(file), { recursive: true });
    const text = typeof content === 'string';
    await replaceFile(file, text ? new TextEncoder().encode(content) : content);
  } catch (error) {
    throw new WrongCall(`${file} cannot be written: ${reasonOf(error as NodeJS.ErrnoException)}.`);
  }
}
