import { readFile } from 'node:fs/promises';
import { readNotes } from '../../evidence/index.ts';
import { dossierIn, reasonOf } from '../dossier.ts';
import { writeJson } from '../json.ts';
import { notesReport } from '../report/notes.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

const MOST_BYTES = 8_000_000;

/** Reads a file of notes, with the printings and sources of a dossier where one is given. */
export async function notes(
  file: string,
  folder: string | undefined,
  { json = false }: { json?: boolean },
  terminal: Terminal,
): Promise<0 | 1> {
  const text = await textOf(file);
  const dossier = folder === undefined ? undefined : await dossierIn(folder);
  const reading = readNotes(
    text,
    dossier && { printings: dossier.evidence.printings, sources: dossier.evidence.sources },
  );
  if (json) await writeJson(reading, terminal);
  else await terminal.write(notesReport(reading, text, terminal.width));
  return 0;
}

async function textOf(file: string): Promise<string> {
  const bytes = await readFile(file).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  if (bytes.includes(0)) throw new WrongCall(`${file} is not a text.`);
  if (bytes.length > MOST_BYTES) throw new WrongCall(`${file} is longer than 8 MB.`);
  return new TextDecoder().decode(bytes);
}
