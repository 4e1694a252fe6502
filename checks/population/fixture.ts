import { readFileSync } from 'node:fs';

const folder = new URL('../fixtures/population/', import.meta.url);

/** Rows of a table of reference values; their cells hold no commas. */
export function tableOf(name: string): Record<string, string>[] {
  const [header = '', ...lines] = readFileSync(new URL(name, folder), 'utf8').trim().split('\n');
  const columns = header.split(',');
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(columns.map((column, i) => [column, (cells[i] ?? '').trim()]));
  });
}

/** A file of reference values. */
// biome-ignore lint/suspicious/noExplicitAny: each file has a shape of its own, as its source gives it
export function valuesOf(name: string): any {
  return JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
}
