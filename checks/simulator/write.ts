import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isoOf } from '../../src/evidence/index.ts';
import type { Simulated } from './types.ts';

type Row = Readonly<Record<string, string | number | undefined>>;

const quoted = (cell: string) => (/[",\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

function csv(columns: readonly string[], rows: readonly Row[]): string {
  const lines = rows.map((row) => columns.map((c) => quoted(String(row[c] ?? ''))).join(','));
  return `${[columns.join(','), ...lines].join('\n')}\n`;
}

/** Writes a simulated dossier as a folder of plain files, and beside it what is true. */
export function writeDossier(folder: string, { evidence, truth }: Simulated, title: string): void {
  mkdirSync(folder, { recursive: true });
  const put = (file: string, columns: readonly string[], rows: readonly Row[]) =>
    writeFileSync(join(folder, file), csv(columns, rows));
  const manifest = { format: 1, title, subject: 'a simulated card', language: 'en' };
  writeFileSync(join(folder, 'dossier.json'), `${JSON.stringify(manifest, null, 2)}\n`);
  put('printings.csv', PRINTINGS, evidence.printings as unknown as Row[]);
  put(
    'products.csv',
    ['id', 'kind', 'market', 'series', 'issue'],
    evidence.products as unknown as Row[],
  );
  put('contents.csv', ['product', 'printing'], evidence.contents as unknown as Row[]);
  put('orders.csv', ['earlier', 'later', 'reason'], evidence.orders as unknown as Row[]);
  put(
    'sources.csv',
    ['id', 'kind', 'cites'],
    evidence.sources.map((s) => ({ ...s, cites: s.cites.join('|') })),
  );
  put(
    'claims.csv',
    CLAIMS,
    evidence.claims.map(
      (claim) =>
        ({
          ...claim,
          printing: claim.printings.join('|'),
          stated_on: claim.stated_on?.text,
          read_on: claim.read_on?.text,
        }) as unknown as Row,
    ),
  );
  put(
    'truth.csv',
    ['printing', 'day'],
    [...truth.days].map(([printing, day]) => ({ printing, day: isoOf(day) })),
  );
}

const PRINTINGS = [
  'id',
  'language',
  'market',
  'product',
  'number',
  'finish',
  'edition',
  'wave',
  'channel',
];
const CLAIMS = ['printing', 'product', 'source', 'property', 'value', 'stated_on'];
