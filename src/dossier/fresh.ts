import type { Change } from './types.ts';

/** What a new dossier starts from. */
export interface Beginning {
  readonly title: string;
  readonly subject?: string;
  /** BCP 47 tag. */
  readonly language?: string;
  readonly width_mm?: number;
  readonly height_mm?: number;
  readonly changes?: readonly Change[];
}

/** The files of a new dossier as bytes, by name. */
export function freshDossier(_beginning: Beginning): ReadonlyMap<string, Uint8Array> {
  throw new Error('not written yet');
}
