import { readFile } from 'node:fs/promises';
import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import type { Cells, WireChange, WireDating } from '../../../src/contract/index.ts';
import { madeUpAnswers } from './answers.ts';
import { madeUpDossier, madeUpSources, type Tables } from './rows.ts';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

/** The policy of the real server, so that the page is tried under it. */
export const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

interface Kept {
  readonly label: string;
  readonly tables: Tables;
}

interface Stage {
  version: number;
  tables: Tables;
  readonly dating: WireDating;
  readonly past: Kept[];
  readonly future: Kept[];
}

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** Serves the built page from `folder` with a made-up dossier of `n` printings, on a free port. */
export async function serveStage(folder: string, n: number): Promise<Served> {
  const { claims, dating } = madeUpAnswers(n);
  const tables = { printings: n, claims, sources: madeUpSources() };
  const stage: Stage = { version: 1, tables, dating, past: [], future: [] };
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    if (path === '/api/events') {
      response.writeHead(200, { 'content-type': 'text/event-stream' });
      response.write(':\n\n');
      return;
    }
    if (path.startsWith('/api/')) {
      let body = '';
      request.on('data', (part: Buffer) => {
        body += part.toString();
      });
      request.on('end', () => answer(stage, path, body, response));
      return;
    }
    void file(folder, path, response);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  const close = () =>
    new Promise<void>((done) => {
      server.closeAllConnections();
      server.close(() => done());
    });
  return { url: `http://127.0.0.1:${port}/`, close };
}

async function file(folder: string, path: string, response: ServerResponse): Promise<void> {
  const name = path === '/' ? 'index.html' : normalize(path).replace(/^(\.\.[/\\])+/, '');
  try {
    const bytes = await readFile(join(folder, name));
    const type = TYPES[extname(name)] ?? 'application/octet-stream';
    response.writeHead(200, { 'content-type': type, 'content-security-policy': POLICY });
    response.end(bytes);
  } catch {
    response.writeHead(404).end();
  }
}

function changed(rows: readonly Cells[], { op, row = 0, after = {} }: WireChange): Cells[] {
  if (op === 'add') return [...rows, after];
  if (op === 'remove') return rows.filter((_, at) => at !== row - 2);
  return rows.map((cells, at) => (at === row - 2 ? after : cells));
}

function step(stage: Stage, label: string, changes: readonly WireChange[]): void {
  stage.past.push({ label, tables: stage.tables });
  stage.future.length = 0;
  for (const change of changes) {
    const name = change.file === 'sources.csv' ? 'sources' : 'claims';
    stage.tables = { ...stage.tables, [name]: changed(stage.tables[name], change) };
  }
  stage.version++;
}

function move(stage: Stage, from: Kept[], to: Kept[]): void {
  const last = from.pop();
  if (!last) return;
  to.push({ label: last.label, tables: stage.tables });
  stage.tables = last.tables;
  stage.version++;
}

function state(stage: Stage) {
  const top = (steps: readonly Kept[]) => {
    const last = steps.at(-1);
    return last ? { label: last.label, at: '2026-01-01T00:00:00Z' } : null;
  };
  return { undo: top(stage.past), redo: top(stage.future) };
}

function answer(stage: Stage, path: string, body: string, response: ServerResponse): void {
  const asked = body ? JSON.parse(body) : {};
  if (path === '/api/changes') step(stage, asked.label, asked.changes);
  if (path === '/api/undo') move(stage, stage.past, stage.future);
  if (path === '/api/redo') move(stage, stage.future, stage.past);
  const { version } = stage;
  const answers: Record<string, unknown> = {
    '/api/dossier': { ...madeUpDossier(version, stage.tables), ...state(stage) },
    '/api/dating': { version, dating: stage.dating },
    '/api/dossiers': { dossiers: [], dataFolder: 'made-up' },
    '/api/notes': NOTES,
    '/api/population': { version, ...NO_COUNTS },
    '/api/prices': { version, ...NO_PRICES },
  };
  const ofOne = path.startsWith('/api/prices/of/') ? { version, ...NO_PRICE } : undefined;
  const found = answers[path] ?? ofOne ?? { version, conflicts: [], ...state(stage) };
  response.writeHead(200, { 'content-type': 'application/json' });
  response.end(JSON.stringify(found));
}

/** The made-up dossier has neither reports nor sales. */
const NO_COUNTS = { on: null, services: [], printings: [], falls: [], in_doubt: 0 };
const NO_PRICES = { on: null, currency: 'EUR', services: [], printings: [], leftOut: [] };
const NO_PRICE = { on: '2026-06-30', day: 739797, currency: 'EUR', prices: [], sales: [] };

function noteLine(line: number, printing: Cells | null, leftOver: string, claims: object[] = []) {
  const context = { printing: null, source: null, year: null };
  return { line, printing, claims, left_over: leftOver, kind: 'item', context };
}

function noteClaim(property: string, value: string, source: string | null, p: number) {
  return { property, value, source, p, words: '', two_way: value.startsWith('[') };
}

const NOTES = {
  lines: [
    noteLine(1, { number: '14', finish: 'foil', wave: '1' }, '', [
      noteClaim('on-sale', '1993-09-24', 'pub. page', 0.97),
      noteClaim('on-sale', '1993-10', 'checklist', 0.9),
    ]),
    noteLine(2, null, 'ask about the tin'),
    noteLine(3, { number: '15', language: 'ko' }, '', [
      noteClaim('seen-by', '[1996-03-04,1996-04-03]', null, 0.62),
    ]),
  ],
};
