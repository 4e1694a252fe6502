import { spawn } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import { readDossier } from '../../src/dossier/index.ts';
import { filesOf, removeDrafts } from '../../src/host/index.ts';
import { doorsOf } from '../../src/server/index.ts';
import { openStore } from '../../src/store/index.ts';
import { filesWith, idsAfter } from './sequence.ts';

const WRITER = fileURLToPath(new URL('./writer.ts', import.meta.url));
const BUNDLES = fileURLToPath(new URL('../../node_modules/.printlore/kill', import.meta.url));
const BUDGET_MS = 10_000;
const ROUNDS_AT_MOST = 40;

/** The writer as one file of JavaScript, which starts much faster than its sources. */
async function bundled(): Promise<string> {
  const outDir = join(BUNDLES, String(process.pid));
  await build({
    configFile: false,
    logLevel: 'error',
    build: { ssr: WRITER, outDir, emptyOutDir: true, target: 'node20' },
  });
  return join(outDir, 'writer.js');
}

/** Kills a writer `delay` ms after so many acknowledgements; answers how many it gave at last. */
async function killedAfter(
  writer: string,
  folder: string,
  round: string,
  { acks, delay }: { acks: number; delay: number },
): Promise<number> {
  const child = spawn(process.execPath, [writer, folder, round], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let heard = 0;
  let doomed = false;
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    heard += text.split('\n').length - 1;
    if (doomed || heard < acks) return;
    doomed = true;
    setTimeout(() => child.kill('SIGKILL'), delay);
  });
  const signal = await new Promise((done) => child.on('close', (_, by) => done(by)));
  expect(signal).toBe('SIGKILL');
  return heard;
}

describe('a workbench that is killed while it writes', () => {
  it('loses no acknowledged change and leaves no half-written file', {
    timeout: 60_000,
  }, async () => {
    const folder = await mkdtemp(join(tmpdir(), 'printlore-kill-'));
    await writeFile(join(folder, 'printings.csv'), 'id\npt-first\n');
    for (const [name, text] of Object.entries(filesWith([]))) {
      await writeFile(join(folder, name), text);
    }
    const writer = await bundled();
    let before: readonly string[] = [];
    let acknowledged = 0;
    let rounds = 0;
    let followed = 0;
    // Moments that spread evenly whatever the number of rounds (golden ratio).
    for (const start = Date.now(); Date.now() - start < BUDGET_MS && rounds < ROUNDS_AT_MOST; ) {
      const spread = (rounds * 0.618_034) % 1;
      const moment = { acks: 2 + (rounds % 9), delay: spread * 25 };
      const acks = await killedAfter(writer, folder, String(rounds), moment);
      const left = await readFile(join(folder, 'claims.csv'), 'utf8');
      before = await checkedAfter(folder, String(rounds), before, acks);
      if (left !== filesWith(before)['claims.csv']) followed++;
      acknowledged += acks;
      rounds++;
    }
    console.info(
      `${rounds} kills, ${acknowledged} acknowledged steps, none lost; ${followed} times the files had still to follow`,
    );
    expect(acknowledged).toBeGreaterThan(rounds);
    await rm(folder, { recursive: true });
    await rm(dirname(writer), { recursive: true });
  });
});

/** Looks at what a killed writer left, lets the files follow, and answers the sources there are. */
async function checkedAfter(
  folder: string,
  round: string,
  before: readonly string[],
  acks: number,
): Promise<readonly string[]> {
  const states = [-2, -1, 0, 1].map((more) => [
    ...before,
    ...idsAfter(round, Math.max(0, acks + more)),
  ]);
  for (const file of ['sources.csv', 'claims.csv']) {
    const text = await readFile(join(folder, file), 'utf8');
    expect(states.map((ids) => filesWith(ids)[file])).toContain(text);
  }
  const opened = await openStore(folder, doorsOf(folder));
  if (!opened.ok) throw new Error(opened.reason);
  expect(opened.notices).toEqual([]);
  expect(await opened.store.unsettled()).toEqual([]);
  const last = (await opened.store.steps()).undo?.label ?? '';
  await opened.store.close();
  await removeDrafts(folder);
  const sources = await readFile(join(folder, 'sources.csv'), 'utf8');
  // The step that was under way may be there or not; every acknowledged one is.
  const found = states.slice(2).find((ids) => filesWith(ids)['sources.csv'] === sources);
  expect(found, `after ${acks} acknowledged steps of round ${round}`).toBeDefined();
  expect(await readFile(join(folder, 'claims.csv'), 'utf8')).toBe(filesWith(found!)['claims.csv']);
  expect(last).toBe(`step ${found!.at(-1)?.slice(1)}`);
  expect((await readdir(folder)).sort()).toEqual(
    ['.printlore', 'claims.csv', 'printings.csv', 'sources.csv'].sort(),
  );
  expect((await readDossier(await filesOf(folder))).faults).toEqual([]);
  return found!;
}
