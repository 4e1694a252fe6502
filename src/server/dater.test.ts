import { fileURLToPath } from 'node:url';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import {
  compareClaims,
  type Dating,
  date,
  openDating,
  redate,
  withChange,
} from '../dating/index.ts';
import { readDossier } from '../dossier/index.ts';
import { type Evidence, isoOf, parseEdtf } from '../evidence/index.ts';
import { Cancelled, filesOf } from '../host/index.ts';
import { type Dater, threadedDater } from './dater.ts';

const DEMO = fileURLToPath(new URL('../../demo/dossier', import.meta.url));
const { signal } = new AbortController();

describe('dating in threads', () => {
  let demo: Evidence;
  let dater: Dater;
  beforeAll(async () => {
    demo = (await readDossier(await filesOf(DEMO))).evidence;
  });
  beforeEach(() => {
    dater = threadedDater();
  });
  afterEach(() => dater.close());

  /** Evidence in which the n-th claim of a day on sale is for a week later. */
  function shifted(evidence: Evidence, n: number): Evidence {
    const days = evidence.claims.filter(({ property, date: said, printings }) => {
      const [range, more] = said?.ranges ?? [];
      const isDay = range && !more && range.first === range.last;
      return isDay && property === 'on-sale' && printings.length === 1;
    });
    const value = isoOf(days[n]!.date!.ranges[0]!.first + 7);
    const reading = parseEdtf(value);
    if (!reading.ok) throw new RangeError(value);
    const { date: said } = reading;
    const claims = evidence.claims.map((c) => (c === days[n] ? { ...c, value, date: said } : c));
    return { ...evidence, claims };
  }
  /** What the step itself makes of changed claims. */
  function redated(before: Evidence, after: Evidence): Dating {
    const { dating, kept } = openDating(before, { effort: 'first' });
    return withChange(dating, redate(kept!, compareClaims(before, after)!)!);
  }

  it('answers what the step itself answers', async () => {
    const answer = await dater.date(demo, 'first', signal);
    expect(answer).toEqual(date(demo, { effort: 'first' }));
  });

  it('is ended when it is no longer wanted, and dates again', async () => {
    const stop = new AbortController();
    const dated = dater.date(demo, 'refined', stop.signal);
    stop.abort();
    await expect(dated).rejects.toBeInstanceOf(Cancelled);
    const again = await dater.date(demo, 'first', signal);
    expect(again.effort).toBe('first');
  });

  it('dates a change by what it learned of the whole, several changes together', async () => {
    await dater.date(demo, 'first', signal);
    const once = shifted(demo, 0);
    const twice = shifted(once, 9);
    expect(await dater.redate(once)).toEqual(redated(demo, once));
    expect(await dater.redate(twice)).toEqual(redated(demo, twice));
    expect(await dater.redate(demo)).toEqual(date(demo, { effort: 'first' }));
  });

  it('keeps what it learned while the next whole is dated, and when that is ended', async () => {
    await dater.date(demo, 'first', signal);
    const once = shifted(demo, 0);
    const twice = shifted(once, 9);
    const stop = new AbortController();
    const next = dater.date(once, 'refined', stop.signal);
    expect(await dater.redate(once)).toEqual(redated(demo, once));
    stop.abort();
    await expect(next).rejects.toBeInstanceOf(Cancelled);
    expect(await dater.redate(twice)).toEqual(redated(demo, twice));
  });

  it('goes on from the whole that was dated last', async () => {
    await dater.date(demo, 'first', signal);
    const once = shifted(demo, 0);
    const twice = shifted(once, 9);
    await dater.date(once, 'first', signal);
    expect(await dater.redate(twice)).toEqual(redated(once, twice));
    await dater.date(twice, 'first', signal);
    expect(await dater.redate(once)).toEqual(redated(twice, once));
  });

  it('leaves to the whole what cannot be dated without it', async () => {
    expect(await dater.redate(demo)).toBeUndefined();
    await dater.date(demo, 'first', signal);
    const fewer = { ...demo, orders: demo.orders.slice(1) };
    expect(fewer.orders.length).toBeLessThan(demo.orders.length);
    expect(await dater.redate(fewer)).toBeUndefined();
    const [claim] = demo.claims.filter((c) => c.property === 'on-sale');
    const reading = parseEdtf('2400-01-01');
    if (!reading.ok) throw new RangeError('no date');
    const late = { ...claim!, value: '2400-01-01', date: reading.date };
    const claims = demo.claims.map((one) => (one === claim ? late : one));
    expect(await dater.redate({ ...demo, claims })).toBeUndefined();
  });
});
