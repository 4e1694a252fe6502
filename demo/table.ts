/** A row of a table, as cells by column name; a missing cell is written empty. */
export type Row = Readonly<Record<string, string | undefined>>;

/**
 * Writes rows as RFC 4180 text with line feeds. Throws `RangeError` where a row has a cell that
 * the columns do not name.
 */
export function tableText(columns: readonly string[], rows: readonly Row[]): string {
  for (const row of rows) {
    const stray = Object.keys(row).find((key) => !columns.includes(key));
    if (stray !== undefined) throw new RangeError(`no column ${stray} among ${columns.join(', ')}`);
  }
  const lines = rows.map((row) => columns.map((column) => cell(row[column] ?? '')).join(','));
  return `${[columns.join(','), ...lines].join('\n')}\n`;
}

function cell(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
