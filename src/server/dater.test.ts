import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { date } from '../dating/index.ts';
import { readDossier } from '../dossier/index.ts';
import { Cancelled, filesOf } from '../host/index.ts';
import { threadedDater } from './dater.ts';

const DEMO = fileURLToPath(new URL('../../demo/dossier', import.meta.url));

describe('dating in a thread', () => {
  const dater = threadedDater();
  afterAll(() => dater.close());
  const evidence = async () => (await readDossier(await filesOf(DEMO))).evidence;

  it('answers what the step itself answers', { timeout: 60_000 }, async () => {
    const { signal } = new AbortController();
    const answer = await dater.date(await evidence(), 'first', signal);
    expect(answer).toEqual(date(await evidence(), { effort: 'first' }));
  });

  it('is ended when it is no longer wanted, and dates again', { timeout: 60_000 }, async () => {
    const stop = new AbortController();
    const dated = dater.date(await evidence(), 'refined', stop.signal);
    stop.abort();
    await expect(dated).rejects.toBeInstanceOf(Cancelled);
    const again = await dater.date(await evidence(), 'first', new AbortController().signal);
    expect(again.effort).toBe('first');
  });
});
