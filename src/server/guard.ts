import { createHash, timingSafeEqual } from 'node:crypto';
import type { MiddlewareHandler } from 'hono';
import { TOKEN_HEADER } from '../contract/index.ts';
import { Refused } from './refusal.ts';

/** What a browser may do with a page of ours: take everything from here and nothing from within. */
export const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

const HEADERS = {
  'content-security-policy': POLICY,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(), microphone=(), geolocation=()',
};

/** Puts the same strict headers on every answer, refusals included. */
export function strictHeaders(): MiddlewareHandler {
  return async (context, next) => {
    for (const [name, value] of Object.entries(HEADERS)) context.header(name, value);
    await next();
  };
}

/**
 * Lets only requests through that were addressed to this machine by its own name, so that a foreign
 * page cannot reach the workbench by pointing its own name at 127.0.0.1 (DNS rebinding).
 */
export function ownHost(port: () => number): MiddlewareHandler {
  return async (context, next) => {
    const host = context.req.header('host') ?? '';
    if (!hostsOf(port()).includes(host.toLowerCase())) {
      throw new Refused('forbidden', `This workbench does not answer under the name “${host}”.`);
    }
    await next();
  };
}

/** Lets only our own page call the routes: its origin, its token. */
export function ownPage(port: () => number, token: string): MiddlewareHandler {
  return async (context, next) => {
    const origin = context.req.header('origin');
    const site = context.req.header('sec-fetch-site');
    const own = hostsOf(port()).map((host) => `http://${host}`);
    if (origin !== undefined && !own.includes(origin.toLowerCase())) {
      throw new Refused('forbidden', `The page at ${origin} may not use this workbench.`);
    }
    if (site !== undefined && site !== 'same-origin' && site !== 'none') {
      throw new Refused('forbidden', 'Another page may not use this workbench.');
    }
    if (!sameText(context.req.header(TOKEN_HEADER) ?? '', token)) {
      throw new Refused(
        'no-token',
        'This page belongs to an earlier start of the workbench: load it anew.',
      );
    }
    await next();
  };
}

function hostsOf(port: number): readonly string[] {
  const ends = port === 80 ? ['', ':80'] : [`:${port}`];
  return ['127.0.0.1', 'localhost'].flatMap((name) => ends.map((end) => name + end));
}

/** Compares in a time that tells nothing of where the texts differ. */
function sameText(one: string, other: string): boolean {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(one), digest(other));
}
