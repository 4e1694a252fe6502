import { join } from 'node:path';
import {
  annotationsOf,
  cslOf,
  csvOf,
  feedOf,
  jsonOf,
  researchZip,
  type Shown,
  sharedTables,
} from '../../chronicle/index.ts';
import { type Dossier, leavingGroundIn, readDossier, readRevisions } from '../../dossier/index.ts';
import { filesIn } from '../dossier.ts';
import { faultsReport } from '../report/faults.ts';
import { counted } from '../report/words.ts';
import type { Terminal } from '../terminal.ts';
import { writeAsked } from '../written.ts';

/** Writes what readers may download of a dossier into a folder; nothing that stays is in it. */
export async function downloads(
  folder: string,
  out: string,
  shown: Shown,
  terminal: Terminal,
): Promise<0 | 1> {
  const files = await filesIn(folder);
  const dossier = await readDossier(files);
  const { revisions, faults } = await readRevisions(files);
  if (faults.length > 0) terminal.say(faultsReport(faults, terminal.width));
  const feed = feedOf(dossier.manifest.title || dossier.manifest.subject, revisions);
  const made = downloadsOf(dossier, shown);
  if (feed !== '') made.set('revisions.atom', feed);
  for (const [name, content] of made) await writeAsked(join(out, name), content);
  await terminal.write(`${counted(made.size, 'file')} written to ${out}.\n`);
  return faults.length === 0 ? 0 : 1;
}

function downloadsOf(dossier: Dossier, shown: Shown): Map<string, Uint8Array | string> {
  const ground = leavingGroundIn(dossier, []);
  const tables = sharedTables(ground, shown);
  const { width_mm: width, height_mm: height } = dossier.manifest;
  const card = width && height ? { width, height } : null;
  const json = (value: unknown) => `${JSON.stringify(value, null, 1)}\n`;
  return new Map<string, Uint8Array | string>([
    ['research.zip', researchZip(tables, ground.texts, dossier.documents.get('dossier.json'))],
    ['data.json', jsonOf(tables)],
    ...tables.map((table) => [`data/${table.file}`, csvOf(table)] as const),
    ['sources.csl.json', json(cslOf(tables))],
    ['annotations.json', json(annotationsOf(tables, card))],
  ]);
}
