import type { IdentificationKey } from './key.ts';
import { type KeyAround, keyNotes, leadsTo } from './words.ts';

/** Lines of 8-point type that a column of the page holds, and letters that a line of one column holds. */
const LINES = 72;
const LETTERS = 118;
/** Type sizes in points, the largest first, and columns beside each other. */
const FITS = [
  [9, 1],
  [9, 2],
  [8, 2],
  [7, 2],
  [7, 3],
  [6, 3],
  [5, 3],
  [5, 4],
  [4, 4],
] as const;

/** The largest type in which all lines find room. */
export function keyFit(
  key: IdentificationKey,
  around: KeyAround,
): readonly [size: number, columns: number] {
  const fits = FITS.find(([size, columns]) => {
    const letters = (LETTERS * 8) / size / columns - 4;
    const lines = key.couplets.reduce(
      (sum, { leads }) =>
        sum +
        1.5 +
        leads.reduce((so, lead) => {
          const text = `${lead.says} ${leadsTo(lead, around.called)}`;
          return so + Math.ceil(text.length / letters);
        }, 0),
      0,
    );
    const notes = keyNotes(key, around).reduce((so, one) => so + Math.ceil(one.length / 150), 3);
    return lines / columns <= (LINES * 8) / size - notes;
  });
  return fits ?? [4, 5];
}
