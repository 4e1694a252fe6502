import type { Work } from '../../contract/index.ts';
import { Cancelled } from '../../host/index.ts';
import { Refused } from '../refusal.ts';
import { openPress, type Press } from './presses.ts';
import type { PressTask, PressWord } from './tasks.ts';

type Writing = Extract<PressTask, { do: 'publish' | 'film' }>;

/** Writes one publication at a time, tells how it comes on, and stops it where that is wished. */
export class Working {
  #work: Work | null = null;
  #stop = new AbortController();
  #press: Press | undefined;

  /** What is at work, or was last. */
  get work(): Work | null {
    return this.#work;
  }

  /** Begins to write. Throws `Refused` while something else is at work. */
  start(task: Writing): Work {
    if (this.#work?.state === 'running')
      throw new Refused('at-work', 'Something is being written already: wait for it, or stop it.');
    this.#stop = new AbortController();
    this.#press ??= openPress();
    const work: Work = {
      ...{ does: task.do, out: task.out, state: 'running' },
      ...{ step: 'Beginning', share: 0, left: [], said: '' },
    };
    this.#work = work;
    void this.#press
      .run(task, this.#stop.signal, (word) => hear(work, word))
      .then(
        ({ said = '' }) => Object.assign(work, { state: 'done', share: 1, said }),
        (error: Error) => Object.assign(work, endOf(error)),
      );
    return work;
  }

  /** Ends what is at work; what was written before stays whole. */
  stop(): void {
    this.#stop.abort();
  }

  async close(): Promise<void> {
    await this.#press?.close();
  }
}

function hear(work: Work, word: PressWord): void {
  if ('left' in word) work.left.push(word.left);
  else Object.assign(work, word);
}

function endOf(error: Error): Pick<Work, 'state' | 'said'> {
  if (error instanceof Cancelled)
    return { state: 'stopped', said: 'Stopped. What was written before is as it was.' };
  return { state: 'failed', said: `Nothing was published: ${error.message}` };
}
