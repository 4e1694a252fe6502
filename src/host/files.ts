/** The files of a folder, in the shape that reading a dossier takes. */
export interface FolderFiles {
  readonly names: readonly string[];
  open(name: string): AsyncIterable<Uint8Array>;
}

/** Lists a folder's files; no name and no link leads out of the folder. */
export function filesOf(_folder: string): Promise<FolderFiles> {
  throw new Error('not written yet');
}

/** Puts new bytes in a file's place, as a whole or not at all. */
export function replaceFile(_path: string, _bytes: Uint8Array): Promise<void> {
  throw new Error('not written yet');
}
