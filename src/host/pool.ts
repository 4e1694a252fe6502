import { openThread, type Thread } from './thread.ts';

/** Threads that take tasks in turn. */
export interface Pool<Task, Answer> {
  readonly size: number;
  /** Works on a task in the first thread that is free; rejects as `Thread.run` does. */
  run(task: Task): Promise<Answer>;
  close(): Promise<void>;
}

/** Opens up to `size` threads as `openThread` does, each when it is first needed. */
export function openPool<Task, Answer>(
  entry: URL,
  size: number,
  roomMb?: number,
): Pool<Task, Answer> {
  const all: Thread<Task, Answer>[] = [];
  const free: Thread<Task, Answer>[] = [];
  const waiting: ((thread: Thread<Task, Answer>) => void)[] = [];
  const taken = (): Promise<Thread<Task, Answer>> | Thread<Task, Answer> => {
    const idle = free.pop();
    if (idle) return idle;
    if (all.length === size) return new Promise((done) => waiting.push(done));
    const fresh = openThread<Task, Answer>(entry, roomMb);
    all.push(fresh);
    return fresh;
  };
  return {
    size,
    async run(task) {
      const thread = await taken();
      try {
        return await thread.run(task);
      } finally {
        const next = waiting.shift();
        if (next) next(thread);
        else free.push(thread);
      }
    },
    close: async () => void (await Promise.all(all.map((thread) => thread.close()))),
  };
}
