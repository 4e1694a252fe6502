import { stat } from 'node:fs/promises';
import { type Dossier, readDossier } from '../dossier/index.ts';
import { FolderFault, type FolderFiles, filesOf } from '../host/index.ts';
import { WrongCall } from './wrong-call.ts';

/** The files of the dossier in a folder. Throws `WrongCall` where there is none. */
export async function filesIn(folder: string): Promise<FolderFiles> {
  const found = await stat(folder).catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${folder} cannot be opened: ${reasonOf(error)}.`);
  });
  if (!found.isDirectory()) throw new WrongCall(`${folder} is not a folder.`);
  const files = await filesOf(folder);
  if (!files.names.includes('printings.csv')) {
    throw new WrongCall(`${folder} is not a dossier: there is no printings.csv in it.`);
  }
  return files;
}

/** Reads the dossier in a folder. Throws `WrongCall` where there is none. */
export async function dossierIn(folder: string): Promise<Dossier> {
  return readDossier(await filesIn(folder));
}

/** Throws `WrongCall` for a folder that could not be written, and what else went wrong as it is. */
export function notWritten(folder: string): (error: Error) => never {
  return (error) => {
    if ('code' in error || error instanceof FolderFault)
      throw new WrongCall(`${folder} cannot be written: ${reasonOf(error)}.`);
    throw error;
  };
}

/** Why the system could not open something, in plain words. */
export function reasonOf(error: NodeJS.ErrnoException): string {
  if (error.code === 'ENOENT') return 'there is no such file or folder';
  if (error.code === 'EACCES') return 'you may not read it';
  return error.message;
}
