import {
  annotationsOf,
  cslOf,
  csvOf,
  feedOf,
  jsonOf,
  researchZip,
  type Shown,
  sharedTables,
  type ToldRevision,
} from '../chronicle/index.ts';
import { type Dossier, leavingGroundIn } from '../dossier/index.ts';
import type { Files } from './told.ts';

/** What readers may download of a dossier, by name; nothing that stays is in it. */
export function downloadFiles(
  dossier: Dossier,
  shown: Shown,
  history: readonly ToldRevision[],
): Files {
  const ground = leavingGroundIn(dossier, []);
  const tables = sharedTables(ground, shown);
  const { title, subject, width_mm: width, height_mm: height } = dossier.manifest;
  const card = width && height ? { width, height } : null;
  const feed = feedOf(title || subject, history);
  const json = (value: unknown) => `${JSON.stringify(value, null, 1)}\n`;
  return new Map<string, Uint8Array | string>([
    ['research.zip', researchZip(tables, ground.texts, dossier.documents.get('dossier.json'))],
    ['data.json', jsonOf(tables)],
    ['sources.csl.json', json(cslOf(tables))],
    ['annotations.json', json(annotationsOf(tables, card))],
    ...(feed === '' ? [] : [['revisions.atom', feed] as const]),
    ...tables.map((table) => [`data/${table.file}`, csvOf(table)] as const),
  ]);
}
