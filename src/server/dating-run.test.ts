import { describe, expect, it } from 'vitest';
import type { Dating } from '../dating/index.ts';
import type { Evidence } from '../evidence/index.ts';
import type { Dater, Effort } from './dater.ts';
import { type Dated, datingRun } from './dating-run.ts';

/** Evidence of one printing, made anew each time, as a dossier that is read anew makes it. */
const evidenceOf = (id: string) => ({ printings: [{ id }], claims: [] }) as unknown as Evidence;

/** A dater whose answers come when the test lets them. */
function heldDater() {
  const asked: Effort[] = [];
  let answer: (dating: Dating) => void = () => undefined;
  const dater: Dater = {
    date: (_, effort, signal) => {
      asked.push(effort);
      return new Promise((done, failed) => {
        answer = done;
        signal.addEventListener('abort', () => failed(signal.reason));
      });
    },
    redate: async () => undefined,
    close: async () => undefined,
  };
  const settle = () => new Promise((done) => setTimeout(done, 5));
  const give = async (effort: Effort) => {
    await settle();
    answer({ effort } as Dating);
    await settle();
  };
  return { asked, dater, give };
}

describe('a dating', () => {
  it('is not made again for a version whose evidence is the same', async () => {
    const { asked, dater, give } = heldDater();
    const told: Dated[] = [];
    const run = datingRun(dater, (dated) => told.push(dated));
    run.start(1, evidenceOf('one'));
    await give('first');
    // In the midst of the refined one, and after it.
    run.start(2, evidenceOf('one'));
    await give('refined');
    run.start(3, evidenceOf('one'));
    expect(asked).toEqual(['first', 'refined']);
    const said = told.map(({ version, refined }) => [version, refined !== undefined]);
    expect(said).toEqual([
      [1, false],
      [2, false],
      [2, true],
      [3, true],
    ]);
    await run.stop();
  });

  it('is made for other evidence, and ends what was being made', async () => {
    const { asked, dater, give } = heldDater();
    const told: Dated[] = [];
    const run = datingRun(dater, (dated) => told.push(dated));
    run.start(1, evidenceOf('one'));
    await give('first');
    run.start(2, evidenceOf('two'));
    await give('first');
    expect(asked).toEqual(['first', 'refined', 'first', 'refined']);
    expect(told.map(({ version, refined }) => [version, refined])).toEqual([
      [1, undefined],
      [2, undefined],
    ]);
    await run.stop();
  });
});
