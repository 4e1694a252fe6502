import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  ChronicleSchema,
  LeavingSchema,
  PreviewSchema,
  ProofSchema,
  RevisionsSchema,
  type Work,
  WorkSchema,
} from '../../contract/index.ts';
import { rawRequest, startTrial, type Trial } from '../fixtures/running.ts';

describe('the chronicle over the wire', () => {
  let trial: Trial;
  beforeAll(async () => {
    trial = await startTrial();
  });
  afterAll(() => trial.end());

  const state = async () => ChronicleSchema.parse((await trial.ask('/api/chronicle')).body);
  const workOf = (body: unknown) => WorkSchema.parse(body).work!;
  const ended = async (): Promise<Work> => {
    for (;;) {
      const work = workOf((await trial.ask('/api/chronicle/work')).body);
      if (work.state !== 'running') return work;
      await new Promise((done) => setTimeout(done, 30));
    }
  };
  const publish = (out: string, proof = true) =>
    trial.ask('/api/chronicle/publish', { out, prices: false, proof });

  it('lists what is missing, and no longer once its cell is filled', async () => {
    const { version, missing } = await state();
    const { entries, why } = missing.find(({ lack }) => lack === 'locator')!;
    expect(why).not.toBe('');
    expect(entries).toHaveLength(2);
    const [{ file, row, column, cells }] = entries as [(typeof entries)[0]];
    const after = { ...cells, [column!]: 'page 3' };
    const change = { file, op: 'replace', row, before: cells, after };
    const changed = await trial.ask('/api/changes', { version, label: 'Say', changes: [change] });
    expect(changed.status).toBe(200);
    const later = (await state()).missing.find(({ lack }) => lack === 'locator')!;
    expect(later.entries.map((entry) => entry.row)).toEqual([3]);
  });

  it('lists what leaves, and the revisions with what changed', async () => {
    const leaving = await trial.ask('/api/chronicle/leaving?prices=true');
    expect(LeavingSchema.parse(leaving.body).leaving).toEqual([]);
    await mkdir(join(trial.folder, 'revisions'));
    const frozen = (number: number, p: number) => ({
      ...{ format: 1, number, day: `2026-0${number}-01`, sha512: `${number}`.repeat(128) },
      ...{ files: {}, claims: [], madeWith: 'Printlore' },
      figures: [
        {
          ...{ name: 'first', claims: [], asOf: null },
          value: { is: 'printing', id: 'pt-first', p },
        },
      ],
    });
    for (const [number, p] of [
      [1, 0.61],
      [2, 0.97],
    ] as const)
      await writeFile(
        join(trial.folder, 'revisions', `${number}.json`),
        JSON.stringify(frozen(number, p)),
      );
    const answer = (await trial.ask('/api/chronicle/revisions')).body;
    const { revisions, faults } = RevisionsSchema.parse(answer);
    expect([faults, revisions.map(({ number }) => number)]).toEqual([[], [2, 1]]);
    expect(revisions[1]?.changed).toBeNull();
    expect(revisions[0]?.changed?.figures).toMatchObject([
      { name: 'first', moved: 'p 0.61 → 0.97' },
    ]);
  });

  it('shows pages before they are published, under a policy of their own', async () => {
    const found = PreviewSchema.parse((await trial.ask('/api/chronicle/preview')).body);
    expect(found.languages).toContain('ko');
    const { path } = found.pages.find(({ printing }) => printing === 'pt-first')!;
    const own = { host: new URL(trial.running.url).host };
    const page = await rawRequest(trial.running, `${found.root}en/${path}`, own);
    expect(page.status).toBe(200);
    expect(page.text).toContain('<html lang="en">');
    const policy = String(page.headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain('sandbox');
    expect(policy).not.toContain('script-src');
    expect(page.headers['x-frame-options']).toBe('SAMEORIGIN');
    for (const lost of ['/preview/x/en/index.html', `${found.root}../../package.json`])
      expect((await rawRequest(trial.running, lost, own)).status).toBe(404);
    const foreign = { host: 'cards.example' };
    expect((await rawRequest(trial.running, `${found.root}en/${path}`, foreign)).status).toBe(403);
  });

  it('draws the stills of one printing', async () => {
    const asked = '/api/chronicle/stills?printing=pt-first&language=en';
    const { root, files } = ProofSchema.parse((await trial.ask(asked)).body);
    expect(files).toContain('stills/wide/pt-first-title.png');
    const host = new URL(trial.running.url).host;
    const still = await rawRequest(trial.running, `${root}${files[0]}`, { host });
    expect([still.status, still.headers['content-type']]).toEqual([200, 'image/png']);
    const unknown = '/api/chronicle/stills?printing=nobody&language=en';
    expect((await trial.ask(unknown)).status).toBe(404);
  });

  it('publishes into a folder that was named, remembers it, and leaves it whole when stopped', async () => {
    const out = join(trial.root, 'published');
    expect((await state()).places.site).toBe(`${trial.folder}-site`);
    for (const bad of ['site', trial.folder, join(trial.folder, 'site'), trial.root])
      expect([bad, (await publish(bad)).status]).toEqual([bad, 400]);
    expect(workOf((await publish(out)).body).state).toBe('running');
    expect((await publish(out)).status).toBe(409);
    expect(await ended()).toMatchObject({ state: 'done', share: 1, left: [] });
    expect((await state()).places.site).toBe(out);
    const before = await readFile(join(out, 'index.html'), 'utf8');

    await publish(out, false);
    expect(await ended()).toMatchObject({
      state: 'failed',
      said: expect.stringContaining('has a day'),
    });
    const mine = join(trial.root, 'mine');
    await mkdir(mine);
    await writeFile(join(mine, 'mine.txt'), 'mine');
    await publish(mine);
    const refused = await ended();
    expect(refused.state).toBe('failed');
    expect(refused.said).toContain('holds other files');
    expect(await readdir(mine)).toEqual(['mine.txt']);

    await publish(out);
    await trial.ask('/api/chronicle/stop', {});
    expect((await ended()).state).toBe('stopped');
    expect(await readFile(join(out, 'index.html'), 'utf8')).toBe(before);
  });
});
