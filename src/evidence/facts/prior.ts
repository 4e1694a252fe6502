import type { SourceKind } from '../types.ts';
import type { Reliability } from './types.ts';

/**
 * How often a kind of source is thought right on numbers, finishes and the like, before its own
 * words are compared with others'. Common practice, no source; worth `STRENGTH` facts only, so
 * that a dossier with a dozen disputed facts overrules it.
 */
const RIGHT: Readonly<Record<SourceKind, number>> = {
  'own-observation': 0.95,
  packaging: 0.95,
  'registration-record': 0.95,
  'publisher-database': 0.9,
  'press-release': 0.9,
  book: 0.88,
  magazine: 0.85,
  newspaper: 0.85,
  correspondence: 0.85,
  'archive-snapshot': 0.85,
  'grading-label': 0.8,
  checklist: 0.8,
  advertisement: 0.75,
  'store-listing': 0.75,
  'auction-record': 0.75,
  forum: 0.7,
  video: 0.7,
  other: 0.7,
};

/** The collector's own row: taken from some source or from a copy, which the row does not say. */
const OWN_ROW = 0.85;
const STRENGTH = 4;
/** How many facts a source's share of right days is worth: days are harder, so not many. */
const DAYS_WORTH = 2;

/** Pseudo-observations [right, wrong] of a source; `kind` left out for the collector's own row. */
export function priorOf(kind?: SourceKind, known?: Reliability): [right: number, wrong: number] {
  const right = kind === undefined ? OWN_ROW : RIGHT[kind];
  const prior: [number, number] = [STRENGTH * right, STRENGTH * (1 - right)];
  const accuracy = known?.accuracy ?? null;
  if (accuracy === null) return prior;
  return [prior[0] + DAYS_WORTH * accuracy, prior[1] + DAYS_WORTH * (1 - accuracy)];
}
