import { extname } from 'node:path';
import type { Hono } from 'hono';
import type { Previewing } from '../chronicle/previewing.ts';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.avif': 'image/avif',
  '.woff2': 'font/woff2',
  '.pdf': 'application/pdf',
};

/**
 * What a page that is looked at before it is published may do: show what stands beside it, within a
 * frame of the workbench. No script runs, no form is sent, nothing is asked elsewhere.
 */
const PREVIEW_POLICY = [
  "default-src 'none'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data:",
  "font-src 'self' data:",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'self'",
  'sandbox allow-same-origin',
].join('; ');

/** `GET /preview/KEY/FILE`: the files of proofs, by a key that only the page was told. */
export function addPreview(app: Hono, previewing: Previewing): void {
  app.get('/preview/:key/*', (context) => {
    const { key } = context.req.param();
    const name = decodeURIComponent(context.req.path).slice(`/preview/${key}/`.length);
    const file = previewing.file(key, name);
    const kind = KINDS[extname(name)];
    context.header('content-security-policy', PREVIEW_POLICY);
    context.header('x-frame-options', 'SAMEORIGIN');
    if (file === undefined || kind === undefined)
      return context.text('There is no such page, or it is no longer there.', 404);
    context.header('cache-control', 'private, no-cache');
    const body = typeof file === 'string' ? file : new Uint8Array(file);
    return context.body(body, 200, { 'content-type': kind });
  });
}
