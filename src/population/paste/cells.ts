/** How the columns of a pasted text are told apart. */
export type Form = 'HTML table' | 'tabs' | 'CSV' | 'semicolons' | 'bars' | 'wide spaces';

/** A pasted table as cells, without blank rows. */
export interface Pasted {
  readonly form: Form;
  /** Each with the line that it stood on, or the number of its row in an HTML table. */
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
}

/** Cuts a pasted table, a CSV or the first large HTML table of a saved page into cells. */
export function cellsOf(text: string): Pasted {
  if (/<t[rd][\s>]/i.test(text)) return { form: 'HTML table', rows: htmlRows(text) };
  const lines = text.split(/\r?\n/);
  const form = formOf(lines.filter((line) => line.trim() !== ''));
  const rows = lines.flatMap((line, at) => {
    const cells = cut(line, form).map((cell) => cell.trim());
    return cells.every((cell) => cell === '' || /^:?-+:?$/.test(cell))
      ? []
      : { line: at + 1, cells };
  });
  return { form, rows };
}

const FORMS: readonly (readonly [Form, RegExp])[] = [
  ['tabs', /\t/],
  ['bars', /\|.*\|/],
  ['semicolons', /;.*;/],
  ['CSV', /,.*,/],
];

function formOf(lines: readonly string[]): Form {
  const most = lines.length * 0.7;
  const found = FORMS.find(([, mark]) => lines.filter((line) => mark.test(line)).length >= most);
  return found?.[0] ?? 'wide spaces';
}

function cut(line: string, form: Form): string[] {
  if (form === 'tabs') return line.split('\t');
  if (form === 'bars')
    return line
      .replace(/^\s*\|/, '')
      .replace(/\|\s*$/, '')
      .split('|');
  if (form === 'wide spaces') return line.trim().split(/\s{2,}/);
  return quoted(line, form === 'CSV' ? ',' : ';');
}

/** Cells of one line of CSV. */
function quoted(line: string, separator: string): string[] {
  const cells: string[] = [];
  let cell = '';
  let inside = false;
  for (let i = 0; i < line.length; i++) {
    const letter = line[i] as string;
    if (letter === '"' && inside && line[i + 1] === '"') {
      cell += '"';
      i += 1;
    } else if (letter === '"') inside = !inside;
    else if (letter === separator && !inside) {
      cells.push(cell);
      cell = '';
    } else cell += letter;
  }
  return [...cells, cell];
}

/** The rows of the table with the most cells, as tables for the looks of a page have few. */
function htmlRows(text: string): Pasted['rows'] {
  const bare = text.replace(/<!--[\s\S]*?-->|<(script|style)\b[\s\S]*?<\/\1\s*>/gi, '');
  const tables = bare.split(/<table\b[^>]*>/i).map((part) => part.split(/<\/table\s*>/i)[0] ?? '');
  const read = tables.map((table) =>
    table
      .split(/<tr\b[^>]*>/i)
      .slice(1)
      .map((row, at) => ({ line: at + 1, cells: htmlCells(row) })),
  );
  const size = (rows: Pasted['rows']) => rows.reduce((sum, { cells }) => sum + cells.length, 0);
  const largest = read.reduce((best, rows) => (size(rows) > size(best) ? rows : best), []);
  return largest.filter(({ cells }) => cells.some((cell) => cell !== ''));
}

function htmlCells(row: string): string[] {
  return [
    ...row.matchAll(/<t([dh])\b([^>]*)>([\s\S]*?)(?=<\/t[dh]\s*>|<t[dh]\b|<\/tr|$)/gi),
  ].flatMap(([, , attributes = '', content = '']) => {
    const text = decoded(content.replace(/<br\s*\/?>/gi, ' ').replace(/<[^>]*>/g, ''));
    const span = Number(/colspan\s*=\s*["']?(\d+)/i.exec(attributes)?.[1] ?? 1);
    return [text, ...Array.from({ length: Math.min(50, span) - 1 }, () => '')];
  });
}

const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  middot: '·',
  ndash: '–',
  mdash: '—',
};

function decoded(text: string): string {
  return text
    .replace(/&(?:#(\d+)|#x([\da-f]+)|(\w+));/gi, (all, ten, sixteen, name) => {
      const code = ten ? Number(ten) : sixteen ? Number.parseInt(sixteen, 16) : undefined;
      if (code === undefined) return ENTITIES[String(name).toLowerCase()] ?? all;
      return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : all;
    })
    .replace(/\s+/g, ' ')
    .trim();
}
