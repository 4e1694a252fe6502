import { availableParallelism } from 'node:os';
import { MEASURING_ROOM_MB, openPool, type Pool } from '../../host/index.ts';
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
  const size = Math.min(MOST_THREADS, availableParallelism());
  const pool = openPool<Job, object>(ENTRY, size, MEASURING_ROOM_MB);
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

async function answerTo(line: string, folder: string, pool: Pool<Job, object>): Promise<object> {
  return pool.run(jobOf(line, folder));
}

const ENTRY = new URL(
  import.meta.url.endsWith('.ts') ? './measure-thread.ts' : './measure-thread.js',
  import.meta.url,
);
