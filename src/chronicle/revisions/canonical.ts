import type { DossierTable } from '../leaving/types.ts';

/** The research half of a dossier. */
export interface Research {
  readonly tables: readonly DossierTable[];
  readonly texts: ReadonlyMap<string, string>;
  /** `dossier.json` as parsed; undefined without one. */
  readonly manifest: unknown;
}

/**
 * Each research file in a form that only its meaning decides, by name in the order of UTF-16 units.
 * Of a table: a line for each row, the cells trimmed, as a JSON list in the order of the columns'
 * names, columns without any cell left out; names first, lines sorted. Of a text: LF between lines,
 * no byte-order mark. Of `dossier.json`: the canonical JSON of RFC 8785 (`rundgren:2020`).
 */
export function canonicalFiles({ tables, texts, manifest }: Research): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const table of tables)
    if (!table.file.startsWith('desk/')) files.set(table.file, canonicalTable(table));
  for (const [name, text] of texts) files.set(name, text.replaceAll(/\r\n?/g, '\n'));
  if (manifest !== undefined) files.set('dossier.json', canonicalJson(manifest));
  return new Map([...files].sort(([a], [b]) => (a < b ? -1 : 1)));
}

function canonicalTable({ columns, rows }: DossierTable): string {
  const cell = (row: DossierTable['rows'][number], column: string) =>
    (row.cells[column] ?? '').trim();
  const used = [...new Set(columns)]
    .filter((column) => rows.some((row) => cell(row, column) !== ''))
    .sort();
  const lines = rows.map((row) => JSON.stringify(used.map((column) => cell(row, column))));
  return [JSON.stringify(used), ...lines.sort()].map((line) => `${line}\n`).join('');
}

/** Keys sorted by UTF-16 units; numbers and strings as ECMAScript writes them (RFC 8785, 3.2). */
function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${entries.map(([key, part]) => `${JSON.stringify(key)}:${canonicalJson(part)}`).join(',')}}`;
}

/** The text whose SHA-512 stands for all files: `HASH  NAME`, a line each. */
export function hashList(files: Readonly<Record<string, string>>): string {
  return Object.entries(files)
    .map(([name, hash]) => `${hash}  ${name}\n`)
    .join('');
}
