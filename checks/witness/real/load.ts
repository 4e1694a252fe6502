import { readFileSync } from 'node:fs';
import {
  type Claim,
  civilOf,
  dayOf,
  type EdtfDate,
  type Evidence,
  isoOf,
  type Source,
  type SourceKind,
} from '../../../src/evidence/index.ts';

export const REAL_SETS = ['perl', 'tz', 'node'] as const;
export type RealSet = (typeof REAL_SETS)[number];

/** Evidence as a dossier would hold it, and the day number that the maker gives for each printing. */
export interface Real {
  readonly name: RealSet;
  readonly evidence: Evidence;
  readonly truth: ReadonlyMap<string, number>;
}

const KINDS: Readonly<Record<string, SourceKind>> = {
  register: 'publisher-database',
  'register-news': 'checklist',
  announcements: 'archive-snapshot',
  distributor: 'store-listing',
  'distributor-library': 'store-listing',
  'library-a': 'checklist',
  'library-b': 'checklist',
  list: 'checklist',
  compatibility: 'checklist',
};

const FOLDER = new URL('../../fixtures/real/', import.meta.url);

/** A set of real release days (`checks/fixtures/real/README.md`); every version is a product. */
export function loadReal(name: RealSet): Real {
  const truth = rows(`${name}-truth.csv`);
  const claims = rows(`${name}-claims.csv`).map(claim);
  const sources = [...new Set(claims.map(({ source }) => source))].map(sourceOf);
  return {
    name,
    truth: new Map(truth.map(([version, , day]) => [idOf(version!), numberOf(day!)])),
    evidence: {
      printings: truth.map(([version, line]) => ({
        id: idOf(version!),
        product: version!,
        ...(line === '' ? {} : { market: line! }),
      })),
      products: [],
      contents: [],
      sources,
      claims,
      orders: [],
    },
  };
}

function rows(file: string): string[][] {
  const [, ...lines] = readFileSync(new URL(file, FOLDER), 'utf8').trim().split('\n');
  return lines.map((line) => line.split(','));
}

function idOf(version: string): string {
  return `v${version.replaceAll('.', '-')}`;
}

function numberOf(iso: string): number {
  const [year, month, day] = iso.split('-').map(Number);
  const number = dayOf(year!, month!, day!);
  if (isoOf(number) !== iso) throw new RangeError(`${iso} is no day (${civilOf(number).year})`);
  return number;
}

function dateOf(iso: string): EdtfDate {
  const day = numberOf(iso);
  return {
    text: iso,
    level: 0,
    form: 'day',
    ranges: [{ first: day, last: day }],
    approximate: false,
    uncertain: false,
  };
}

function claim([version, source, day]: string[], index: number): Claim {
  return {
    row: index + 2,
    printings: [idOf(version!)],
    source: source!,
    property: 'on-sale',
    value: day!,
    date: dateOf(day!),
  };
}

function sourceOf(id: string): Source {
  const kind = KINDS[id];
  if (kind === undefined) throw new RangeError(`no kind is known for the source ${id}`);
  return { id, title: id, kind, cites: [] };
}
