import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { makeReady } from '../../tools/setup/ready.js';
import { lineOf, started } from './command.ts';

const running: ChildProcess[] = [];
const folders: string[] = [];

function opened(port: number) {
  const folder = mkdtempSync(join(tmpdir(), 'printlore-open-'));
  folders.push(folder);
  const home = { XDG_DATA_HOME: folder, LOCALAPPDATA: folder, HOME: folder };
  const child = started(['open', '--no-open', '--port', `${port}`], home);
  running.push(child);
  return child;
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  if (address === null || typeof address === 'string') throw new Error('no port is free');
  return address.port;
}

beforeAll(() => makeReady({ page: true }), 300_000);
afterEach(() => {
  for (const child of running.splice(0)) child.kill('SIGKILL');
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

describe('open', () => {
  it('prints the address of a page that answers, and ends with 0 when interrupted', async () => {
    const port = await freePort();
    const child = opened(port);
    const line = await lineOf(child, /open at/);
    expect(line).toBe(`Printlore is open at http://127.0.0.1:${port}/`);
    const page = await fetch(`http://127.0.0.1:${port}/`);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('printlore-token');
    const closed = once(child, 'close');
    child.kill('SIGINT');
    expect((await closed)[0]).toBe(0);
  });

  it('takes the next port where one is busy', async () => {
    const port = await freePort();
    const busy = createServer().listen(port, '127.0.0.1');
    await once(busy, 'listening');
    const line = await lineOf(opened(port), /open at/);
    busy.close();
    expect(Number(/:(\d+)\//.exec(line)?.[1])).toBeGreaterThan(port);
  });
});
