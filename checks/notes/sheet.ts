import { readdirSync, readFileSync } from 'node:fs';

/** A claim that a sheet's writer says stands in a line. */
export interface Expected {
  readonly property: string;
  readonly value: string;
  readonly source: string | null;
}

/** A sheet of notes with what is to be found in it. */
export interface Sheet {
  readonly name: string;
  readonly text: string;
  /** By line, from 0. */
  readonly expected: readonly (readonly Expected[])[];
}

const MARK = /\s*⟦([^⟧]*)⟧/gu;

/**
 * Reads a sheet. What a line states is written behind it, one mark a claim:
 * `⟦property|EDTF|source⟧`, the source left empty where the line names none.
 */
export function sheetOf(name: string, marked: string): Sheet {
  const lines = marked.replace(/\n$/u, '').split('\n');
  const expected = lines.map((line) =>
    [...line.matchAll(MARK)].map((match) => {
      const [property = '', value = '', source = ''] = match[1]!.split('|');
      return { property, value, source: source === '' ? null : source };
    }),
  );
  return { name, text: lines.map((line) => line.replace(MARK, '')).join('\n'), expected };
}

const FOLDER = new URL('./sheets/', import.meta.url);

/** All sheets whose names begin so, by name. */
export function sheets(prefix: string): Sheet[] {
  return readdirSync(FOLDER)
    .filter((file) => file.startsWith(prefix) && file.endsWith('.txt'))
    .sort()
    .map((file) => sheetOf(file, readFileSync(new URL(file, FOLDER), 'utf8')));
}
