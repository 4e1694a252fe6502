import { applyChanges } from './apply.ts';
import { FORMAT } from './manifest.ts';
import type { Change, Manifest } from './types.ts';

/** What a new dossier starts from. */
export interface Beginning {
  readonly title: string;
  readonly subject?: string;
  /** BCP 47 tag. */
  readonly language?: string;
  /** Size of the card; left open where it is not known. */
  readonly width_mm?: number;
  readonly height_mm?: number;
  /** Rows to begin with. Adding rows is all that can be done in an empty folder. */
  readonly changes?: readonly Change[];
}

/** Tables that every new dossier has, so that a spreadsheet shows what belongs where. */
const FIRST_TABLES = ['printings.csv', 'sources.csv', 'claims.csv'];

/**
 * The files of a new dossier as bytes, by name. Throws TypeError for a change that is no addition,
 * and as `applyChanges` does.
 */
export function freshDossier(beginning: Beginning): ReadonlyMap<string, Uint8Array> {
  const { changes = [], ...rest } = beginning;
  if (changes.some((change) => change.op !== 'add')) {
    throw new TypeError('a new dossier begins with rows that are added, not others');
  }
  const files = new Map([['dossier.json', manifestBytes(rest)]]);
  for (const file of new Set([...FIRST_TABLES, ...changes.map((change) => change.file)])) {
    const own = changes.filter((change) => change.file === file);
    files.set(file, own.length > 0 ? applyChanges(file, undefined, own).bytes : header(file));
  }
  return files;
}

function header(file: string): Uint8Array {
  const row: Change = { file, op: 'add', after: {} };
  const { bytes, inverse } = applyChanges(file, undefined, [row]);
  return applyChanges(file, bytes, inverse).bytes;
}

function manifestBytes(rest: Omit<Beginning, 'changes'>): Uint8Array {
  const { title, subject = '', language = '' } = rest;
  const size = { width_mm: rest.width_mm ?? null, height_mm: rest.height_mm ?? null };
  const manifest: Manifest = { format: FORMAT, title, subject, language, ...size };
  return new TextEncoder().encode(`${JSON.stringify(manifest, undefined, 2)}\n`);
}
