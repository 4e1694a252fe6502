import { once } from 'node:events';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeReady } from '../../tools/setup/ready.js';
import { ended, started } from './command.ts';

const quiet = join(import.meta.dirname, '..', 'cli', 'input', 'quiet');
const ROWS = 20_000;
let folder: string;

beforeAll(() => makeReady({ page: true }), 300_000);
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'printlore-command-'));
  const rows = Array.from({ length: ROWS }, (_, i) => `Not an id ${i}\n`);
  mkdirSync(join(folder, 'broken'));
  writeFileSync(join(folder, 'broken', 'printings.csv'), `id\n${rows.join('')}`);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('the command as a process', () => {
  it('ends with 0 and the answer alone on standard output', async () => {
    const { exit, out } = await ended(started(['check', quiet, '--json']));
    expect({ exit, out }).toEqual({ exit: 0, out: '{"faults": []}\n' });
  });

  it('ends with 2 after a wrong call, nothing on standard output', async () => {
    const { exit, out, err } = await ended(started(['check', join(folder, 'nowhere')]));
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain('there is no such file or folder');
  });

  it('ends with 1 where there are faults, and prints them all', async () => {
    const { exit, out } = await ended(started(['check', join(folder, 'broken'), '--json']));
    expect(exit).toBe(1);
    expect(JSON.parse(out).faults.length).toBeGreaterThan(0);
  });

  it('ends quietly when the reader goes away', async () => {
    const child = started(['check', join(folder, 'broken'), '--json']);
    let err = '';
    child.stderr.on('data', (piece) => {
      err += piece;
    });
    child.stdout.once('data', () => child.stdout.destroy());
    await once(child, 'close');
    expect(err).toBe('');
  });

  it('prints the same bytes wherever and in whatever language it runs', async () => {
    const surroundings = [
      { TZ: 'Asia/Kolkata', LC_ALL: 'C', NODE_ENV: 'production' },
      { TZ: 'America/Sao_Paulo', LC_ALL: 'fi_FI.UTF-8', NODE_ENV: 'test' },
    ];
    const [one, two] = await Promise.all(
      surroundings.map((env) => ended(started(['date', quiet, '--json'], env))),
    );
    expect(one).toEqual(two);
  });

  it('says its version', async () => {
    const { out } = await ended(started(['--version']));
    const file = join(import.meta.dirname, '..', '..', 'package.json');
    expect(out.trim()).toBe(JSON.parse(readFileSync(file, 'utf8')).version);
  });
});
