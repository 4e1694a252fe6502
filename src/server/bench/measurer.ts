import { MEASURING_ROOM_MB, openThread, type Thread } from '../../host/index.ts';
import type { BenchReply, BenchTask } from './tasks.ts';

/** Measures pictures in a thread of its own, one after the other. */
export interface Measurer {
  run(task: BenchTask): Promise<BenchReply>;
  close(): Promise<void>;
}

/** A thread that starts when it is first asked, and stays warm. */
export function measurer(): Measurer {
  let thread: Thread<BenchTask, BenchReply> | undefined;
  let last: Promise<unknown> = Promise.resolve();
  const entry = new URL(
    import.meta.url.endsWith('.ts') ? './bench-thread.ts' : './bench-thread.js',
    import.meta.url,
  );
  return {
    run: (task) => {
      const answer = last.then(() => {
        thread ??= openThread<BenchTask, BenchReply>(entry, MEASURING_ROOM_MB);
        return thread.run(task);
      });
      last = answer.catch(() => undefined);
      return answer;
    },
    close: async () => {
      await thread?.close();
    },
  };
}
