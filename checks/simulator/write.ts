import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesOf } from './files.ts';
import type { Simulated } from './types.ts';

/** Writes a simulated dossier as a folder of plain files, and beside it what is true. */
export function writeDossier(folder: string, simulated: Simulated, title: string): void {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of filesOf(simulated, title)) writeFileSync(join(folder, name), text);
}
