import type { Dossier, DossierFiles } from './types.ts';

/** Reads a whole dossier; every fault in it is listed, what can be used is used. */
export function readDossier(_files: DossierFiles): Promise<Dossier> {
  throw new Error('not written yet');
}
