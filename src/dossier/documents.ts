import { checkOf, type Surroundings } from './cell-types.ts';
import { FATE, type FaultList } from './faults.ts';
import { LIMITS, sizeInWords } from './limits.ts';
import { concat, decodeTracked } from './lossless.ts';
import { isObject } from './manifest.ts';
import { DOCUMENTS, type DocumentSpec } from './schema.ts';

/** Names of JSON files that belong to a dossier. */
export function isDocument(name: string): boolean {
  return (
    name === 'dossier.json' ||
    DOCUMENTS.some((spec) => spec.file === name) ||
    /^desk\/(examinations\/[^/]+|photos\/[^/]+\/setup)\.json$/.test(name)
  );
}

/** Names of the texts of a dossier's story. */
export function isStory(name: string): boolean {
  return /^story\/[^/]+\.md$/.test(name);
}

/** A small text of the folder as a whole; undefined, and the fault listed, where it is none. */
export async function takeText(
  file: string,
  pieces: AsyncIterable<Uint8Array>,
  limit: number,
  faults: FaultList,
): Promise<string | undefined> {
  const held: Uint8Array[] = [];
  let size = 0;
  for await (const piece of pieces) {
    size += piece.length;
    if (size > limit) {
      const expected = `at most ${sizeInWords(limit)}`;
      faults.add({ file, found: 'a larger file', expected, fate: FATE.file });
      return undefined;
    }
    held.push(piece);
  }
  const { text, damaged } = decodeTracked(concat(held));
  if (!damaged) return text.replace(/^\ufeff/, '');
  faults.add({
    file,
    found: 'bytes that are no UTF-8',
    expected: 'text in UTF-8',
    fate: FATE.file,
  });
  return undefined;
}

/** A JSON file as a value; undefined, and the fault listed, where it is none. */
export async function takeDocument(
  file: string,
  pieces: AsyncIterable<Uint8Array>,
  faults: FaultList,
): Promise<unknown> {
  const text = await takeText(file, pieces, LIMITS.document, faults);
  if (text === undefined) return undefined;
  try {
    return JSON.parse(text) as unknown;
  } catch {
    faults.add({ file, found: text.trim(), expected: 'JSON (RFC 8259)', fate: FATE.file });
    return undefined;
  }
}

/** Lists what is wrong with the keys of a JSON file; entries of a list are counted from 1. */
export function checkDocument(
  file: string,
  document: unknown,
  around: Surroundings,
  faults: FaultList,
): void {
  const spec = DOCUMENTS.find((known) => known.file === file);
  if (spec === undefined || document === undefined) return;
  if (spec.list !== Array.isArray(document)) {
    const expected = spec.list ? 'a list of objects' : 'one object';
    faults.add({ file, found: JSON.stringify(document), expected, fate: FATE.file });
    return;
  }
  const entries = Array.isArray(document) ? document : [document];
  entries.forEach((entry, i) => {
    checkEntry(spec, entry, spec.list ? i + 1 : undefined, around, faults);
  });
}

function checkEntry(
  spec: DocumentSpec,
  entry: unknown,
  row: number | undefined,
  around: Surroundings,
  faults: FaultList,
): void {
  const place = row === undefined ? { file: spec.file } : { file: spec.file, row };
  if (!isObject(entry)) {
    const found = JSON.stringify(entry);
    faults.add({ ...place, found, expected: 'an object', fate: FATE.row });
    return;
  }
  for (const [column, type] of spec.keys) {
    const value = Object.hasOwn(entry, column) ? (entry[column] ?? '') : '';
    if (value === '' || value === 'none') continue;
    const found = typeof value === 'object' ? JSON.stringify(value) : String(value);
    const expected = checkOf(type, around)(found);
    if (expected !== undefined) faults.add({ ...place, column, found, expected, fate: FATE.cell });
  }
}
