import { readdir, readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import type { Context } from 'hono';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.txt': 'text/plain; charset=utf-8',
};

/** The files of the page by their address, read once; nothing else on the disk has an address. */
export type Pages = ReadonlyMap<string, { readonly bytes: Uint8Array; readonly kind: string }>;

/** Reads the built page; empty where it has not been built. */
export async function readPages(folder: string): Promise<Pages> {
  const found = await readdir(folder, { recursive: true, withFileTypes: true }).catch(
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return [];
      throw error;
    },
  );
  const pages = new Map<string, { bytes: Uint8Array; kind: string }>();
  for (const entry of found) {
    const kind = KINDS[extname(entry.name)];
    if (!entry.isFile() || !kind) continue;
    const path = join(entry.parentPath, entry.name);
    const address = `/${relative(folder, path).split(sep).join('/')}`;
    pages.set(address, { bytes: await readFile(path), kind });
  }
  return pages;
}

/**
 * Answers a request for a file of the page. An address without an ending is a screen of the
 * workbench: it gets the page itself, which carries the token of this start.
 */
export function answerPage(context: Context, pages: Pages, token: string): Response {
  const { path } = context.req;
  const asset = pages.get(path);
  if (asset && path !== '/index.html') {
    context.header('cache-control', 'no-cache');
    return context.body(new Uint8Array(asset.bytes), 200, { 'content-type': asset.kind });
  }
  if (extname(path) !== '' && path !== '/index.html') {
    return context.text('There is no such file.', 404);
  }
  const page = pages.get('/index.html');
  if (!page) return context.text('The page has not been built: run “npm run build”.', 503);
  context.header('cache-control', 'no-store');
  return context.html(withToken(new TextDecoder().decode(page.bytes), token));
}

function withToken(html: string, token: string): string {
  const own = `<meta name="printlore-token" content="${token}">`;
  const placed = html.replace(/<meta\s+name="printlore-token"[^>]*>/, own);
  if (placed !== html) return placed;
  return html.replace(/<head[^>]*>/, (head) => `${head}${own}`);
}
