import { readable } from './lossless.ts';
import { rankOf } from './schema.ts';
import type { Fault } from './types.ts';

/** What becomes of the place where a fault is. */
export const FATE = {
  file: 'The file is left out.',
  row: 'The row is left out.',
  cell: 'The cell is read as not known.',
  rest: 'The rest of the file is left out.',
  kept: 'The rest is used.',
} as const;

/** Where a fault is, and what is wrong. */
export interface Finding {
  readonly file: string;
  readonly row?: number;
  readonly column?: string;
  readonly found: string;
  readonly expected: string;
  readonly fate: string;
}

/** Faults listed for one file; the others are counted. */
const LISTED = 10_000;
const SHOWN = 80;

/** All that is wrong in a folder, as it is found. */
export class FaultList {
  readonly #faults: Fault[] = [];
  readonly #counts = new Map<string, number>();

  add(finding: Finding): void {
    const { file } = finding;
    const count = (this.#counts.get(file) ?? 0) + 1;
    this.#counts.set(file, count);
    if (count <= LISTED) this.#faults.push(faultOf(finding));
  }

  /** In the order of the files, then of the rows. */
  sorted(): Fault[] {
    for (const [file, count] of this.#counts) {
      if (count <= LISTED) continue;
      const found = `${count - LISTED} more faults`;
      const expected = `at most ${LISTED}`;
      this.#faults.push(faultOf({ file, row: Infinity, found, expected, fate: '' }));
    }
    const place = (fault: Fault) => (fault.row === null ? 0 : fault.row);
    const sorted = this.#faults.sort(
      (a, b) =>
        rankOf(a.file) - rankOf(b.file) ||
        (a.file < b.file ? -1 : a.file > b.file ? 1 : place(a) - place(b)),
    );
    return sorted.map((fault) => (fault.row === Infinity ? { ...fault, row: null } : fault));
  }
}

function faultOf({ file, row, column, found, expected, fate }: Finding): Fault {
  const shown = shortened(readable(found));
  const place = [
    file,
    row === undefined || row === Infinity ? [] : `row ${row}`,
    column ?? [],
  ].flat();
  const said = shown === '' ? 'nothing' : column === undefined ? shown : `“${shown}”`;
  const message = `${place.join(', ')}: found ${said}, expected ${expected}.${fate && ` ${fate}`}`;
  return { file, row: row ?? null, column: column ?? null, found: shown, expected, message };
}

/** At most 80 letters, without line breaks and control characters. */
function shortened(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is shown as spaces
  const line = text.slice(0, 4 * SHOWN).replace(/[\u0000-\u001f\u007f]+/g, ' ');
  const letters = [...line];
  return letters.length > SHOWN ? `${letters.slice(0, SHOWN - 1).join('')}…` : line;
}
