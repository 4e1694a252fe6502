import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { DossierAnswer, WireDating } from '../contract/index.ts';
import {
  compareClaims,
  type DateOptions,
  date,
  openDating,
  redate,
  withChange,
} from '../dating/index.ts';
import { readDossier } from '../dossier/index.ts';
import type { Evidence } from '../evidence/index.ts';
import { filesOf } from '../host/index.ts';
import { type Dater, threadedDater } from './dater.ts';
import { startTrial, type Trial } from './fixtures/running.ts';

describe('the answer to a changed claim', () => {
  let trial: Trial;
  /** Whether the dating of the whole, once begun, goes on until it is ended. */
  let isSlow: boolean;

  /** Dates in threads; while it is slow, the refined answer never comes. */
  function slowDater(): Dater {
    const dater = threadedDater();
    const never = (signal: AbortSignal) =>
      new Promise<never>((_, end) => signal.addEventListener('abort', () => end(signal.reason)));
    return {
      ...dater,
      date: (evidence, effort, signal) =>
        isSlow && effort === 'refined' ? never(signal) : dater.date(evidence, effort, signal),
    };
  }

  beforeEach(async () => {
    isSlow = false;
    trial = await startTrial({ dater: slowDater() });
  });
  afterEach(() => trial.end());

  /** As the wire has it, without what JSON leaves out. */
  const onWire = (dating: unknown) => JSON.parse(JSON.stringify(dating)) as WireDating;
  const evidence = async () => (await readDossier(await filesOf(trial.folder))).evidence;
  const dated = async (effort: string) =>
    (await trial.ask(`/api/dating?effort=${effort}`)).body.dating as WireDating;
  const whole = (known: Evidence, options: DateOptions = {}) => onWire(date(known, options));
  /** What the step itself makes of changed claims, with what it learned of the whole before. */
  const redated = (before: Evidence, ...changed: Evidence[]) => {
    const { dating, kept } = openDating(before);
    return changed.map((after) =>
      onWire(withChange(dating, redate(kept!, compareClaims(before, after)!)!)),
    );
  };
  const change = async (file: string, after: Record<string, string>, before?: object) => {
    const { version } = (await trial.ask('/api/dossier')).body;
    const op = before ? { op: 'replace', before } : { op: 'add' };
    const changes = [{ file, after, ...op }];
    const made = await trial.ask('/api/changes', { version, label: 'Change', changes });
    expect([made.status, made.body.conflicts]).toEqual([200, []]);
  };
  const say = async (printing: string, value: string) => {
    const { claims } = (await trial.ask('/api/dossier')).body as DossierAnswer;
    const { cells } = claims.find((claim) => claim.printings[0] === printing)!;
    await change('claims.csv', { ...cells, value }, cells);
  };

  // All is asked before the step computes: meanwhile the server, in this very thread, cannot answer.
  it('comes from what was learned before, and is refined behind', async () => {
    const [before, known] = [await evidence(), await dated('refined')];
    await say('pt-first', '1996-07-12');
    const [first, after, refined] = [
      await dated('first'),
      await evidence(),
      await dated('refined'),
    ];
    expect([first]).toEqual(redated(before, after));
    expect(first).not.toEqual(whole(after, { effort: 'first' }));
    expect(first.effort).toBe('first');
    expect(first.printings[0]!.best).toBe('1996-07-12');
    expect(first.printings[1]).toEqual(known.printings[1]);
    expect(refined).toEqual(whole(after));
  });

  it('holds every change since the whole was dated, though newer ones ended its dating', async () => {
    await dated('refined');
    const before = await evidence();
    const [firsts, changed]: [WireDating[], Evidence[]] = [[], []];
    const edit = async (printing: string, value: string) => {
      await say(printing, value);
      firsts.push(await dated('first'));
      changed.push(await evidence());
    };
    isSlow = true;
    await edit('pt-first', '1996-07-12');
    await edit('fi-first', '1996-11');
    await edit('pt-first', '1996-08-23');
    isSlow = false;
    await edit('fi-first', '1996-12');
    const refined = await dated('refined');
    expect(firsts).toEqual(redated(before, ...changed));
    const values = firsts.map(({ printings }) => printings.map(({ claims }) => claims[0]!.value));
    expect(values).toEqual([
      ['1996-07-12', '1996-09'],
      ['1996-07-12', '1996-11'],
      ['1996-08-23', '1996-11'],
      ['1996-08-23', '1996-12'],
    ]);
    expect(refined).toEqual(whole(changed.at(-1)!));
  });

  it('is a rough one of the whole where more than claims have changed', async () => {
    await dated('refined');
    await change('printings.csv', { id: 'kr-first', language: 'ko', market: 'KR', number: '14' });
    const [after, first, refined] = [
      await evidence(),
      await dated('first'),
      await dated('refined'),
    ];
    expect(after.printings).toHaveLength(3);
    expect(first).toEqual(whole(after, { effort: 'first' }));
    expect(refined).toEqual(whole(after));
  });
});
