import { cp, mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { IdentifyAnswerSchema, KeyAnswerSchema } from '../../contract/index.ts';
import { startTrial, type Trial } from '../fixtures/running.ts';

describe('naming a printing over the wire', () => {
  let root: string;
  let trial: Trial;
  const identify = async (body: object) =>
    IdentifyAnswerSchema.parse((await trial.ask('/api/identify', { saw: [], ...body })).body);

  beforeAll(async () => {
    root = await mkdtemp(join(tmpdir(), 'printlore-identifying-'));
    await cp('demo/dossier', join(root, 'demo'), { recursive: true });
    trial = await startTrial({ folder: join(root, 'demo') });
  }, 60_000);
  afterAll(async () => {
    await trial.end();
    await rm(root, { recursive: true });
  });

  it('counts a card’s traits, whose probabilities and the rest add up to 1', async () => {
    const nothing = await identify({});
    const seen = await identify({ saw: [{ trait: 'line 3', value: 'tidebell', sees: '' }] });
    const p = (answer: typeof seen, id: string) =>
      answer.candidates.find((one) => one.id === id)?.p ?? 0;
    // traits.csv of the demo: the second wave has “tidebell” in line 3, the first “tide’s bell”.
    const times = (answer: typeof seen) => p(answer, 'gb-second') / p(answer, 'gb-first');
    expect(times(seen)).toBeGreaterThan(5 * times(nothing));
    for (const { candidates, unlisted } of [nothing, seen]) {
      const sum = candidates.reduce((all, one) => all + one.p, unlisted);
      expect(sum).toBeCloseTo(1, 9);
    }
    expect(nothing.next.length).toBeGreaterThan(3);
    expect(nothing.traits.map(({ trait }) => trait)).toContain('line 3');
  });

  it('tells what the desk holds of a copy, each by where it comes from', async () => {
    const { readings, candidates } = await identify({ copy: 'hare-1' });
    expect(
      readings.filter(({ from }) => from === 'seen').map(({ trait, row }) => [trait, row]),
    ).toEqual([
      ['line 3', 2],
      ['bell ink', 3],
      ['weight', 4],
      ['width', 5],
    ]);
    expect(readings.some(({ from }) => from === 'listing')).toBe(true);
    expect(candidates[0]?.id).toBe('gb-first');
  });

  it('takes an observation as a change that undo takes back', async () => {
    const file = join(root, 'demo', 'desk', 'observations.csv');
    const before = await readFile(file, 'utf8');
    const { version } = await identify({ copy: 'hare-4' });
    const after = { copy: 'hare-4', trait: 'language', value: 'pt-BR', sees: 'eye', note: '' };
    const changes = [{ file: 'desk/observations.csv', op: 'add', after }];
    await trial.ask('/api/changes', { version, label: 'Note language on hare-4', changes });
    const noted = await identify({ copy: 'hare-4' });
    expect(noted.readings).toContainEqual(
      expect.objectContaining({ trait: 'language', from: 'seen' }),
    );
    await trial.ask('/api/undo', {});
    expect(await readFile(file, 'utf8')).toBe(before);
  });

  it('hands out the key to all printings', async () => {
    const { key } = KeyAnswerSchema.parse((await trial.ask('/api/key')).body);
    const leads = key.couplets.flatMap((couplet) => couplet.leads.flatMap(({ ids }) => ids));
    expect(new Set(leads).has('kr-monthly')).toBe(true);
    expect(key.couplets[0]?.from).toBeNull();
  });

  it('refuses a copy that is not there and a value that is none', async () => {
    expect((await trial.ask('/api/identify', { saw: [], copy: 'nobody' })).status).toBe(404);
    const saw = [{ trait: 'weight', value: '1±0 g', sees: '' }];
    expect((await trial.ask('/api/identify', { saw })).body.error.message).toContain('tolerance');
  });
});
