import { availableParallelism } from 'node:os';
import { openThread, type Thread } from '../../host/index.ts';
import { type Job, jobOf } from './job.ts';

/** Most threads, since each may hold a picture of its own with all that is made of it. */
const MOST_THREADS = 4;

/**
 * Answers jobs, one a line, in their order, several at once in threads of their own; a line that
 * cannot be answered gets an object with `error`. Blank lines are passed over.
 */
export async function* answersTo(
  lines: AsyncIterable<string>,
  folder: string,
): AsyncGenerator<object> {
  const pool = openPool(Math.min(MOST_THREADS, availableParallelism()));
  const pending: Promise<object>[] = [];
  try {
    for await (const line of lines) {
      if (line.trim() === '') continue;
      pending.push(answerTo(line, folder, pool).catch(({ message: error }) => ({ error })));
      if (pending.length > 2 * pool.size) yield (await pending.shift()) as object;
    }
    for (const answer of pending) yield await answer;
  } finally {
    await pool.close();
  }
}

async function answerTo(line: string, folder: string, pool: Pool): Promise<object> {
  return pool.run(jobOf(line, folder));
}

interface Pool {
  readonly size: number;
  run(job: Job): Promise<object>;
  close(): Promise<void>;
}

/** Threads that are started as they are needed and take jobs in turn. */
function openPool(size: number): Pool {
  const all: Thread<Job, object>[] = [];
  const free: Thread<Job, object>[] = [];
  const waiting: ((thread: Thread<Job, object>) => void)[] = [];
  const taken = (): Promise<Thread<Job, object>> | Thread<Job, object> => {
    const idle = free.pop();
    if (idle) return idle;
    if (all.length === size) return new Promise((done) => waiting.push(done));
    const fresh = openThread<Job, object>(ENTRY);
    all.push(fresh);
    return fresh;
  };
  return {
    size,
    async run(job) {
      const thread = await taken();
      try {
        return await thread.run(job);
      } finally {
        const next = waiting.shift();
        if (next) next(thread);
        else free.push(thread);
      }
    },
    close: async () => void (await Promise.all(all.map((thread) => thread.close()))),
  };
}

const ENTRY = new URL(
  import.meta.url.endsWith('.ts') ? './measure-thread.ts' : './measure-thread.js',
  import.meta.url,
);
