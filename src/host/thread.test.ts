import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Cancelled, openThread, type Thread } from './index.ts';

describe('a thread', () => {
  let thread: Thread<unknown, number, string>;
  beforeEach(() => {
    thread = openThread(new URL('./fixtures/doubling.ts', import.meta.url));
  });
  afterEach(() => thread.close());

  it('answers one task after the other, also after one that failed', async () => {
    expect(await thread.run(21)).toBe(42);
    await expect(thread.run('fail')).rejects.toThrow('no such number');
    expect(await thread.run(4)).toBe(8);
  });

  it('listens no longer to a task that is done', async () => {
    const warnings: Error[] = [];
    const warn = (warning: Error) => warnings.push(warning);
    process.on('warning', warn);
    // Node warns of a leak at the eleventh listener.
    for (let n = 0; n < 12; n++) await thread.run(n);
    await new Promise((done) => setImmediate(done));
    process.off('warning', warn);
    expect(warnings).toEqual([]);
  });

  it('hears what a task tells on its way, and nothing of the next', async () => {
    const heard: string[] = [];
    expect(await thread.run(21, undefined, (word) => heard.push(word))).toBe(42);
    await thread.run(4);
    expect(heard).toEqual(['doubling 21']);
  });

  it('throws work away that is no longer wanted, and takes new work', async () => {
    const stop = new AbortController();
    const slept = thread.run('sleep', stop.signal);
    expect(() => thread.run(1)).toThrow('at work');
    setTimeout(() => stop.abort(), 30);
    await expect(slept).rejects.toBeInstanceOf(Cancelled);
    expect(await thread.run(5)).toBe(10);
    await expect(thread.run(5, stop.signal)).rejects.toBeInstanceOf(Cancelled);
  });

  it('says that its thread ended, and goes on with another', async () => {
    await expect(thread.run('die')).rejects.toThrow('ended unexpectedly');
    expect(await thread.run(6)).toBe(12);
  });

  it('ends while it is at work, and takes no work afterwards', async () => {
    const slept = thread.run('sleep');
    const ended = expect(slept).rejects.toThrow('is closed');
    await thread.close();
    await ended;
    await expect(thread.run(1)).rejects.toThrow('is closed');
  });

  it('says why its module cannot be started', async () => {
    const none = openThread(new URL('./fixtures/none.ts', import.meta.url));
    await expect(none.run(1)).rejects.toThrow(/none\.ts/);
    await none.close();
  });
});
