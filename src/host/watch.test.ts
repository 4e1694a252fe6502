import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Watch, watchFolder } from './index.ts';

const sleep = (ms: number) => new Promise((done) => setTimeout(done, ms));

describe('a watched folder', () => {
  let folder: string;
  let watched: Watch;
  let calls = 0;
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'printlore-watch-'));
    await mkdir(join(folder, '.printlore'));
    calls = 0;
    watched = watchFolder(folder, ['desk'], () => calls++, { quiet: 200, poll: 120 });
    await sleep(60);
  });
  afterEach(async () => {
    watched.close();
    await rm(folder, { recursive: true });
  });
  const until = async (wanted: number) => {
    for (let n = 0; n < 100 && calls < wanted; n++) await sleep(20);
    await sleep(400);
    return calls;
  };

  it('tells of several writes once, when they are over', async () => {
    for (let n = 0; n < 5; n++) {
      await writeFile(join(folder, 'claims.csv'), 'x'.repeat(n));
      await sleep(20);
    }
    expect(await until(1)).toBe(1);
  });

  it('sees a subfolder that comes later, and not the journal', async () => {
    await writeFile(join(folder, '.printlore', 'journal.sqlite'), 'x');
    await sleep(500);
    expect(calls).toBe(0);
    await mkdir(join(folder, 'desk'));
    await writeFile(join(folder, 'desk', 'copies.csv'), 'id\n');
    expect(await until(1)).toBe(1);
  });
});
