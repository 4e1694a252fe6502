import type { DossierFiles } from './types.ts';

/** Files held in memory, as text or bytes by name, in the shape that `readDossier` takes. */
export function filesInMemory(
  files: Readonly<Record<string, string | Uint8Array>>,
  pieceSize = 2 ** 16,
): DossierFiles {
  return {
    names: Object.keys(files),
    async *open(name) {
      const content = files[name];
      const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
      if (bytes === undefined) throw new RangeError(`file must be one of the folder, not ${name}`);
      for (let at = 0; at < bytes.length; at += pieceSize) {
        yield bytes.subarray(at, at + pieceSize);
      }
    },
  };
}
