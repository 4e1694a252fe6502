import { writeFile } from 'node:fs/promises';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rawRequest, startTrial, type Trial } from './fixtures/running.ts';
import { POLICY } from './guard.ts';

describe('the workbench answers nobody but its own page', () => {
  let trial: Trial;
  beforeAll(async () => {
    trial = await startTrial();
  });
  afterAll(() => trial.end());
  const port = () => new URL(trial.running.url).port;
  const own = () => ({
    host: `127.0.0.1:${port()}`,
    'x-printlore-token': trial.running.token,
  });
  const codeOf = (text: string) => JSON.parse(text).error.code;

  it('under its own names only', async () => {
    const names = ['cards.example', `cards.example:${port()}`, `127.0.0.1.cards.example:${port()}`];
    for (const host of [...names, '127.0.0.1', '127.0.0.1:1', '[::1]:80']) {
      for (const path of ['/', '/api/dossier', '/assets/main.js']) {
        const answer = await rawRequest(trial.running, path, { ...own(), host });
        expect([host, path, answer.status]).toEqual([host, path, 403]);
        expect(answer.text).not.toContain(trial.running.token);
      }
    }
    const local = { ...own(), host: `localhost:${port()}` };
    expect((await rawRequest(trial.running, '/api/dossier', local)).status).toBe(200);
  });

  it('on this machine only', async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter(({ internal, family }) => !internal && family === 'IPv4');
    for (const { address } of others) {
      await expect(fetch(`http://${address}:${port()}/`)).rejects.toThrow();
    }
    expect(trial.running.url).toMatch(/^http:\/\/127\.0\.0\.1:/);
  });

  it('from its own origin only', async () => {
    for (const origin of ['http://cards.example', 'null', `https://127.0.0.1:${port()}`]) {
      const answer = await rawRequest(trial.running, '/api/dossier', { ...own(), origin });
      expect([origin, answer.status]).toEqual([origin, 403]);
      expect(answer.headers).not.toHaveProperty('access-control-allow-origin');
    }
    const site = { ...own(), 'sec-fetch-site': 'cross-site' };
    expect((await rawRequest(trial.running, '/api/dossier', site)).status).toBe(403);
    const page = {
      ...own(),
      origin: `http://127.0.0.1:${port()}`,
      'sec-fetch-site': 'same-origin',
    };
    expect((await rawRequest(trial.running, '/api/dossier', page)).status).toBe(200);
  });

  it('with the token of this start only', async () => {
    for (const token of ['', 'x', trial.running.token.slice(1), `${trial.running.token}x`]) {
      for (const path of ['/api/dossier', '/api/events', '/api/nothing']) {
        const answer = await rawRequest(trial.running, path, {
          ...own(),
          'x-printlore-token': token,
        });
        expect([answer.status, codeOf(answer.text)]).toEqual([401, 'no-token']);
      }
    }
  });

  it('to no preflight of another origin', async () => {
    const answer = await fetch(`${trial.running.url}api/changes`, {
      method: 'OPTIONS',
      headers: { origin: 'http://cards.example', 'access-control-request-method': 'POST' },
    });
    expect(answer.status).toBe(403);
    expect(answer.headers.get('access-control-allow-origin')).toBeNull();
  });
});

describe('an answer of the workbench', () => {
  let trial: Trial;
  beforeAll(async () => {
    trial = await startTrial();
    await writeFile(join(trial.root, 'secret.txt'), 'not for you');
  });
  afterAll(() => trial.end());
  const own = () => ({
    host: new URL(trial.running.url).host,
    'x-printlore-token': trial.running.token,
  });

  it('carries strict headers, also where it is a refusal', async () => {
    expect(POLICY).not.toMatch(/unsafe|https?:|\*/);
    for (const path of ['/', '/assets/main.js', '/missing.js', '/api/dossier', '/api/nothing']) {
      const { headers } = await trial.ask(path);
      expect(headers.get('content-security-policy')).toBe(POLICY);
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
    }
    const { status, headers } = await rawRequest(trial.running, '/', { host: 'cards.example' });
    expect([status, headers['content-security-policy']]).toEqual([403, POLICY]);
  });

  it('is the page with its token, for every screen, never kept by the browser', async () => {
    for (const path of ['/', '/index.html', '/printings/pt-first']) {
      const { status, body, headers } = await trial.ask(path);
      expect(status).toBe(200);
      expect(body).toContain(`<meta name="printlore-token" content="${trial.running.token}">`);
      expect(headers.get('cache-control')).toBe('no-store');
    }
    expect((await trial.ask('/assets/main.js')).body).toContain('works');
    expect((await trial.ask('/missing.js')).status).toBe(404);
  });

  it.each([
    '/../secret.txt',
    '/assets/../../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/assets/%2e%2e%2f%2e%2e%2fsecret.txt',
    '/..\\secret.txt',
    '//secret.txt',
    '/assets/main.js%00.txt',
    '/C:/secret.txt',
    '/.printlore/journal.sqlite',
  ])('does not lead out of the page by %s', async (target) => {
    const answer = await rawRequest(trial.running, target, own());
    expect([404, 400]).toContain(answer.status);
    expect(answer.text).not.toContain('not for you');
  });

  it('refuses a body that is too large, before it is read to the end', async () => {
    const huge = JSON.stringify({ text: 'x'.repeat(17 * 1024 * 1024) });
    const headers = { ...own(), 'content-type': 'application/json' };
    const said = { ...headers, 'content-length': String(huge.length) };
    const declared = await rawRequest(trial.running, '/api/notes', said, '').catch(() => undefined);
    if (declared) expect(declared.status).toBe(413);
    const chunked = await rawRequest(
      trial.running,
      '/api/notes',
      { ...headers, 'transfer-encoding': 'chunked' },
      huge,
    ).catch(() => undefined);
    if (chunked) expect(chunked.status).toBe(413);
    expect((await trial.ask('/api/dossier')).status).toBe(200);
  });

  it('says what is wrong with a body', async () => {
    const post = async (body: string, kind = 'application/json') => {
      const answer = await rawRequest(
        trial.running,
        '/api/changes',
        { ...own(), 'content-type': kind },
        body,
      );
      return [answer.status, JSON.parse(answer.text).error];
    };
    expect((await post('{}', 'text/plain'))[0]).toBe(415);
    expect((await post('{"version": 1'))[1].message).toMatch(/not JSON/);
    expect((await post('['.repeat(200_000)))[0]).toBe(400);
    const [status, error] = await post('{"version": 1, "label": "", "changes": [{"op": "drop"}]}');
    expect(status).toBe(400);
    expect(error.problems.join(' ')).toMatch(/label.*changes\.0\.file.*changes\.0\.op/);
  });

  it.each([
    '../claims.csv',
    '/etc/claims.csv',
    '.printlore/x.csv',
    'a/b/c.csv',
    'dossier.json',
    'desk/../x.csv',
  ])('takes no change of %s', async (file) => {
    const changes = [{ file, op: 'add', after: { id: 'x' } }];
    const { status, body } = await trial.ask('/api/changes', { version: 1, label: 'x', changes });
    expect([status, body.error.code]).toEqual([400, 'bad-request']);
  });
});
