import {
  type CounterfeitKind,
  type Counts,
  expectedNumbers,
  isLook,
  type Known,
  type Look,
  type Reading,
  readValue,
  type Seen,
  type TraitRow,
  type WordsReader,
  wordsReader,
} from '../catalogue/index.ts';
import { measuredOf } from './measured-traits.ts';
import { addShared, newestCounts } from './newest-counts.ts';
import { rowsOf } from './rows-of.ts';
import { type Stands, standingOf } from './standing.ts';
import type { Dossier } from './types.ts';

/** What a dossier knows that tells its printings apart, as it stood on a day (ISO 8601, or later). */
export function knownOf(dossier: Dossier, day: string, graded: boolean): Known {
  return {
    printings: dossier.evidence.printings,
    counterfeits: counterfeitsOf(dossier, day),
    traits: [...sizeRows(dossier), ...traitRowsOf(dossier)],
    about: aboutOf(dossier, day, graded),
    others: [],
  };
}

/** A reader of sellers' words and labels for the words of a dossier's traits. */
export function readerOf({ evidence }: Dossier, known: Known): WordsReader {
  const titles = evidence.products.map(({ id, title }) => [id, title ?? ''] as const);
  return wordsReader(known, new Map(titles.filter(([, title]) => title !== '')));
}

/** What the desk holds of a copy, by where it comes from. */
export interface Kept {
  /** What was seen on it, with the row of `desk/observations.csv`. */
  readonly observed: readonly { readonly reading: Reading; readonly row: number }[];
  /** What the bench measured. */
  readonly measured: readonly Reading[];
  /** What its seller and its label say. */
  readonly said: readonly Reading[];
  /** The printings, one of which it is called. */
  readonly named: readonly string[];
}

/** What the desk holds of a copy, by where it comes from. */
export function keptOf(dossier: Dossier, copy: string, read: WordsReader): Kept {
  const rows = rowsOf(dossier, 'desk/copies.csv', (cell) => cell).filter(
    (row) => row('id') === copy,
  );
  const stands = standingOf(dossier);
  return {
    observed: observedOn(dossier, copy),
    measured: measuredOf(dossier.documents.get(`desk/examinations/${copy}.json`)),
    said: rows.flatMap((row) => [
      ...read(`${row('described_as')} ${row('listing')}`, 'listing'),
      ...read(row('label'), 'label'),
    ]),
    named: [...new Set(rows.flatMap((row) => stands(row('printing'))))],
  };
}

/** The same, all readings together. */
export function seenOf(dossier: Dossier, copy: string, read: WordsReader): Seen {
  const { observed, measured, said, named } = keptOf(dossier, copy, read);
  const readings = [...observed.map(({ reading }) => reading), ...measured, ...said];
  return { readings, named };
}

function observedOn(dossier: Dossier, copy: string): Kept['observed'] {
  return rowsOf(dossier, 'desk/observations.csv', (cell, row) => {
    const value = readValue(cell('value'));
    if (cell('copy') !== copy || cell('trait') === '' || cell('value') === '' || !value.ok)
      return [];
    const sees = isLook(cell('sees')) ? (cell('sees') as Look) : null;
    return [{ row, reading: { trait: cell('trait'), value: value.value, sees, sd: null } }];
  }).flat();
}

/** The traits of a dossier's printings and counterfeits, each row with whom it is of. */
export function traitRowsOf(dossier: Dossier): TraitRow[] {
  const stands = standingOf(dossier);
  const kinds = new Set(
    rowsOf(dossier, 'counterfeits.csv', (cell) => cell).map((row) => row('id')),
  );
  return rowsOf(dossier, 'traits.csv', (cell) => cell).flatMap((row): readonly TraitRow[] => {
    const value = readValue(row('value'));
    const of = kinds.has(row('of')) ? [row('of')] : wholeOrOne(stands, row('of'));
    if (row('trait') === '' || row('value') === '' || !value.ok || of.length === 0) return [];
    const sees = row('sees');
    const look = isLook(sees) ? sees : null;
    const publish = row('publish') !== 'no';
    return [
      { of, trait: row('trait'), value: value.value, sees: look, region: row('region'), publish },
    ];
  });
}

/** How far a true card may be from the size of its kind, in mm. Judgement, no source. */
const CUT = 0.5;

/** The size of the card, for printings and counterfeits that have no row of their own. */
function sizeRows({ manifest, evidence }: Dossier): TraitRow[] {
  const of = evidence.printings.map(({ id }) => id);
  const sides = [
    ['width', manifest.width_mm],
    ['height', manifest.height_mm],
  ] as const;
  return sides.flatMap(([trait, mm]): readonly TraitRow[] => {
    if (mm === null) return [];
    const value = { is: 'number', value: mm, tolerance: CUT, rounding: 0.05, measure: 'length' };
    return [
      { of, trait, value: value as TraitRow['value'], sees: 'calliper', region: '', publish: true },
    ];
  });
}

/** Of one of several, not known which, nothing is known of either. */
function wholeOrOne(stands: Stands, cell: string): readonly string[] {
  return cell.includes('|') ? [] : stands(cell);
}

function counterfeitsOf(dossier: Dossier, day: string): CounterfeitKind[] {
  const stands = standingOf(dossier);
  return rowsOf(dossier, 'counterfeits.csv', (cell) => cell).flatMap(
    (row): readonly CounterfeitKind[] => {
      const kind = row('kind');
      const since = row('known_since').slice(0, 4);
      const later = /^\d{4}$/.test(since) && day !== '' && since > day.slice(0, 4);
      if ((kind !== 'counterfeit' && kind !== 'alteration') || later) return [];
      return [{ id: row('id'), printings: stands(row('printing')), kind }];
    },
  );
}

/**
 * How many of each printing are about, by what is on offer, was sold and was graded up to a day. A
 * copy in a slab is met as graded copies are.
 */
function aboutOf(dossier: Dossier, day: string, graded: boolean): ReadonlyMap<string, number> {
  const stands = standingOf(dossier);
  const until = (date: string) => day === '' || date === '' || date <= day;
  const supply = new Map<string, number>();
  for (const row of rowsOf(dossier, 'supply.csv', (cell) => cell)) {
    const count = Number(row(graded ? 'graded' : 'raw')) || 0;
    if (until(row('as_of'))) addShared(supply, stands(row('printing')), count);
  }
  const sold = new Map<string, number>();
  for (const row of rowsOf(dossier, 'sales.csv', (cell) => cell)) {
    const alike = (row('service') !== '') === graded;
    if (until(row('date')) && alike) addShared(sold, stands(row('printing')), 1);
  }
  const population = new Map<string, number>();
  for (const { printing, count } of newestCounts(dossier, day))
    addShared(population, [printing], count);
  const counts: readonly Counts[] = [
    // How far these go astray: Judgement, no source.
    { by: supply, sd: 0.4 },
    { by: sold, sd: 0.5 },
    { by: population, sd: graded ? 0.4 : 0.9 },
  ];
  return expectedNumbers(
    dossier.evidence.printings.map(({ id }) => id),
    counts,
  );
}
