import type {
  Cells,
  LabelRows,
  WireChange,
  WireLabelled,
  WireMatch,
} from '../../contract/index.ts';

const FILE = 'population.csv';

/** Candidates shown at once, and the least probability of one. */
const SHOWN = 6;
const LEAST = 0.03;

/** A match with a printing of the dossier. */
export type Candidate = WireMatch & { readonly printing: string };

/** The printings that a label may be of, the likeliest first. */
export function candidatesOf({ matches, confirmed }: WireLabelled): readonly Candidate[] {
  const own = matches.filter((match): match is Candidate => match.printing !== null);
  return own.filter(
    ({ p, printing }, at) => confirmed?.includes(printing) || (p >= LEAST && at < SHOWN),
  );
}

/** What a reader's word on a label is: these printings and no others, none of the dossier's, or nothing. */
export type Word = readonly string[] | 'none' | 'nothing';

/** The word that leaves one candidate out: the others that are about as likely, else none. */
export function wordWithout(candidates: readonly Candidate[], printing: string): Word {
  const rest = candidates.filter((one) => one.printing !== printing && one.p >= 0.2);
  return rest.length === 0 ? 'none' : rest.map((one) => one.printing);
}

/** A word as the cell of the column `printing` has it. */
export function cellOf(word: Word): string {
  if (word === 'nothing') return '';
  return word === 'none' ? 'none' : word.join('|');
}

/** The changes that write a word into the rows of a label. */
export function wordChanges({ rows }: LabelRows, word: Word): WireChange[] {
  const printing = cellOf(word);
  return rows
    .filter(({ cells }) => (cells.printing ?? '') !== printing)
    .map(({ row, cells }) => {
      const after: Cells = { ...cells, printing };
      return { file: FILE, op: 'replace' as const, row, before: cells, after };
    });
}

/** The changes that add a report that was read from a paste. */
export function reportChanges(
  service: string,
  asOf: string,
  counts: readonly { readonly label: string; readonly grade: string; readonly count: number }[],
): WireChange[] {
  return counts.map(({ label, grade, count }) => ({
    file: FILE,
    op: 'add' as const,
    after: { service, as_of: asOf, label, printing: '', grade, count: String(count) },
  }));
}
