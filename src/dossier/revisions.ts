import type { Revision } from '../chronicle/index.ts';
import { takeDocument } from './documents.ts';
import { FATE, FaultList } from './faults.ts';
import { isObject } from './manifest.ts';
import type { DossierFiles, Fault } from './types.ts';

const NAME = /^revisions\/([1-9]\d*)\.json$/;

/** The name of the file of a revision. */
export function revisionName(number: number): string {
  return `revisions/${number}.json`;
}

/** The frozen revisions of a dossier, oldest first, and what is wrong with their files. */
export async function readRevisions(
  files: DossierFiles,
): Promise<{ readonly revisions: readonly Revision[]; readonly faults: readonly Fault[] }> {
  const faults = new FaultList();
  const revisions: Revision[] = [];
  for (const file of files.names) {
    if (!file.startsWith('revisions/')) continue;
    const number = Number(NAME.exec(file)?.[1]);
    if (Number.isNaN(number)) {
      const expected = 'a number and .json, such as revisions/1.json';
      faults.add({ file, found: file, expected, fate: FATE.file });
      continue;
    }
    const document = await takeDocument(file, files.open(file), faults);
    if (document === undefined) continue;
    const wrong = wrongIn(document, number);
    if (wrong === null) revisions.push(document as Revision);
    else faults.add({ file, ...wrong, fate: FATE.file });
  }
  return { revisions: revisions.sort((a, b) => a.number - b.number), faults: faults.sorted() };
}

interface Wrong {
  readonly found: string;
  readonly expected: string;
}

/** What keeps a file from being a revision of this number; null where nothing does. */
function wrongIn(document: unknown, number: number): Wrong | null {
  if (!isObject(document)) return { found: JSON.stringify(document), expected: 'one object' };
  const wanted: readonly (readonly [key: string, right: (value: unknown) => boolean, string])[] = [
    ['format', (value) => value === 1, 'format 1'],
    ['number', (value) => value === number, `the number ${number} of its name`],
    ['day', (value) => /^\d{4}-\d\d-\d\d$/.test(String(value)), 'day as YYYY-MM-DD'],
    [
      'sha512',
      (value) => /^[0-9a-f]{128}$/.test(String(value)),
      'sha512 of 128 hexadecimal digits',
    ],
    ['files', isObject, 'files with their hashes'],
    ['claims', areNamed('key'), 'a list of claims, each with its key'],
    ['figures', areNamed('name'), 'a list of figures, each with its name'],
  ];
  for (const [key, right, expected] of wanted)
    if (!right(document[key]))
      return { found: JSON.stringify(document[key]) ?? `no ${key}`, expected };
  return null;
}

function areNamed(key: string): (value: unknown) => boolean {
  return (value) =>
    Array.isArray(value) && value.every((one) => isObject(one) && typeof one[key] === 'string');
}
