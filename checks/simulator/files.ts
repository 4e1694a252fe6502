import { type Claim, isoOf } from '../../src/evidence/index.ts';
import type { Simulated } from './types.ts';

const COLUMNS = {
  printings: [
    'id',
    'language',
    'market',
    'product',
    'number',
    'finish',
    'edition',
    'wave',
    'channel',
  ],
  products: ['id', 'kind', 'market', 'series', 'issue'],
  contents: ['product', 'printing'],
  orders: ['earlier', 'later', 'reason'],
  sources: ['id', 'kind', 'cites'],
  claims: ['printing', 'product', 'source', 'property', 'value', 'stated_on'],
  truth: ['printing', 'day'],
} as const;

const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

function csv(columns: readonly string[], rows: readonly object[]): string {
  const lines = rows.map((row) => {
    const cells: Readonly<Record<string, unknown>> = { ...row };
    return columns.map((column) => quoted(String(cells[column] ?? ''))).join(',');
  });
  return `${[columns.join(','), ...lines].join('\n')}\n`;
}

const claimRow = (claim: Claim) => ({
  ...claim,
  printing: claim.printings.join('|'),
  stated_on: claim.stated_on?.text,
});

/** The files of a simulated dossier by name, with what is true in `truth.csv`, which nobody reads. */
export function filesOf({ evidence, truth }: Simulated, title: string): Map<string, string> {
  const manifest = { format: 1, title, subject: 'a simulated card', language: 'en' };
  const days = [...truth.days].map(([printing, day]) => ({ printing, day: isoOf(day) }));
  const sources = evidence.sources.map((s) => ({ ...s, cites: s.cites.join('|') }));
  const tables: [keyof typeof COLUMNS, readonly object[]][] = [
    ['printings', evidence.printings],
    ['products', evidence.products],
    ['contents', evidence.contents],
    ['orders', evidence.orders],
    ['sources', sources],
    ['claims', evidence.claims.map(claimRow)],
    ['truth', days],
  ];
  const files = tables.map(([name, rows]) => [`${name}.csv`, csv(COLUMNS[name], rows)] as const);
  return new Map([['dossier.json', `${JSON.stringify(manifest, null, 2)}\n`], ...files]);
}
