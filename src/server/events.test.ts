import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EventSchema, type WireEvent } from '../contract/index.ts';
import type { Effort } from './dater.ts';
import { plainDater, startTrial, type Trial } from './fixtures/running.ts';

describe('the events', () => {
  let trial: Trial;
  let asked: Effort[];
  let heard: WireEvent[];
  let stop: AbortController;

  beforeEach(async () => {
    asked = [];
    heard = [];
    stop = new AbortController();
    trial = await startTrial({ dater: plainDater(asked) });
  });
  afterEach(async () => {
    stop.abort();
    await trial.end();
  });

  async function listen(): Promise<void> {
    const response = await fetch(`${trial.running.url}api/events`, {
      headers: { 'x-printlore-token': trial.running.token },
      signal: stop.signal,
    });
    expect(response.headers.get('content-type')).toContain('text/event-stream');
    const decoder = new TextDecoder();
    let rest = '';
    const take = async () => {
      for await (const piece of response.body ?? []) {
        const parts = (rest + decoder.decode(piece, { stream: true })).split('\n\n');
        rest = parts.pop() ?? '';
        for (const part of parts) heard.push(EventSchema.parse(JSON.parse(part.slice(6))));
      }
    };
    void take().catch((error: Error) => expect(error.name).toBe('AbortError'));
  }
  const until = async (found: (events: readonly WireEvent[]) => boolean) => {
    for (let n = 0; n < 300 && !found(heard); n++)
      await new Promise((done) => setTimeout(done, 20));
    expect(found(heard)).toBe(true);
  };
  const add = async (value: string) => {
    const after = { printing: 'pt-first', source: 'catalogo', property: 'seen-by', value };
    const { version } = (await trial.ask('/api/dossier')).body;
    const changes = [{ file: 'claims.csv', op: 'add', after }];
    return (await trial.ask('/api/changes', { version, label: 'Add', changes })).body.version;
  };

  it('begin with how things stand, then tell of each change and its dating', async () => {
    await trial.ask('/api/dating?effort=refined');
    await listen();
    await until(([event]) => event?.dating === 'refined' && !event.outside);
    const version = await add('1997');
    await until(
      (events) => events.at(-1)?.dating === 'refined' && events.at(-1)?.version === version,
    );
    const mine = heard.filter((event) => event.version === version).map(({ dating }) => dating);
    expect(mine).toEqual(['none', 'first', 'refined']);
  });

  it('end older dating when there is newer work', async () => {
    await trial.again({ dater: plainDater(asked, 1500) });
    await listen();
    const versions = [await add('1997'), await add('1998'), await add('1999')];
    const last = versions.at(-1);
    await until((events) => events.some((e) => e.dating === 'refined' && e.version === last));
    const refined = heard.filter(
      ({ dating, version }) => dating === 'refined' && versions.includes(version),
    );
    expect(refined.map(({ version }) => version)).toEqual([last]);
  });

  it('tell of an edit made outside', async () => {
    await listen();
    await trial.ask('/api/dating?effort=refined');
    const file = join(trial.folder, 'claims.csv');
    await writeFile(file, (await readFile(file, 'utf8')).replace('1996-09', '1996-10'));
    await until((events) => events.some(({ outside }) => outside));
    expect((await trial.ask('/api/dossier')).body.claims[1].value).toBe('1996-10');
  });

  it('say so when dating gives up, and date again after the next change', async () => {
    let fails = true;
    const good = plainDater();
    await trial.again({
      dater: {
        ...good,
        date: async (evidence, effort, signal) => {
          if (fails) throw new Error('no room');
          return await good.date(evidence, effort, signal);
        },
      },
    });
    await listen();
    await until((events) => events.at(-1)?.trouble === 'no room');
    const refused = await trial.ask('/api/dating?effort=first');
    expect([refused.status, refused.body.error.message]).toEqual([
      500,
      'That did not work: no room',
    ]);
    fails = false;
    await add('1997');
    await until((events) => events.at(-1)?.dating === 'refined');
  });
});
