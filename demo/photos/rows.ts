import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Row } from '../table.ts';
import { SHOTS, type Shot } from './shots.ts';
import { SPECIMENS } from './specimens.ts';

const DOSSIER = join(import.meta.dirname, '..', 'dossier');

const KNOWN_BY: Readonly<Record<string, string>> = {
  'gb-first-1': 'Taken from a box that was opened on film in 1994.',
  'gb-first-2': 'From the first owner, with the receipt of December 1994.',
  'gb-first-3': 'Same sheet as gb-first-2: the cut lines meet.',
};

const TAKEN: Readonly<Record<string, string>> = {
  'hare-1': '2026-06-18T20:10:00+03:00',
  'hare-2': '2025-08-29T18:40:00+03:00',
  'hare-3': '2026-06-18T20:45:00+03:00',
};

/** Rows of `pictures.csv`, with the checksums of the files that lie in the dossier. */
export function pictureRows(): readonly (Row & {
  readonly file: string;
  readonly sha256: string;
})[] {
  const cuts = Object.keys(SPECIMENS).map((id) => ({
    file: `desk/photos/${id}/cut.jpg`,
    of: id,
    role: 'arrival',
    side: 'front',
    dpi: '1200',
    ...taken(id),
  }));
  const chart = {
    file: 'desk/photos/hare-1/chart.jpg',
    of: 'hare-1',
    role: 'evidence',
    ...taken('hare-1'),
  };
  return [...SHOTS.map(rowOf), ...cuts, chart].map((row) => ({
    ...row,
    sha256: sha256Of(row.file),
  }));
}

function rowOf({ file, of, role, side }: Shot) {
  const row = { file, of, role, side };
  if (role === 'reference') {
    const known_by = KNOWN_BY[file.replace(/^pictures\/(.*)\.jpg$/, '$1')] as string;
    return {
      ...row,
      by: 'Quenby Marl',
      known_by,
      rights: 'with leave of Quenby Marl',
      publish: 'yes',
    };
  }
  // What a seller shows stays the seller's: without rights, nothing is published.
  if (role === 'listing' || of === 'hare-4') return { ...row, by: 'seller', publish: 'no' };
  return { ...row, ...taken(of) };
}

function taken(id: string) {
  if (id === 'hare-4') return { by: 'seller', publish: 'no' };
  return { taken: TAKEN[id] as string, by: 'owner', rights: 'own picture', publish: 'yes' };
}

function sha256Of(file: string): string {
  const path = join(DOSSIER, file);
  return existsSync(path) ? createHash('sha256').update(readFileSync(path)).digest('hex') : '';
}
