import { openThread, type Thread } from '../../host/index.ts';
import type { DeskReply, DeskTask } from './tasks.ts';

/** Does the desk's heavy reckoning in a thread of its own, one task after the other. */
export interface Reckoner {
  run(task: DeskTask): Promise<DeskReply>;
  close(): Promise<void>;
}

/** A thread that starts when it is first asked, and stays warm. */
export function reckoner(): Reckoner {
  let thread: Thread<DeskTask, DeskReply> | undefined;
  let last: Promise<unknown> = Promise.resolve();
  const entry = new URL(
    import.meta.url.endsWith('.ts') ? './desk-thread.ts' : './desk-thread.js',
    import.meta.url,
  );
  return {
    run: (task) => {
      const answer = last.then(() => {
        thread ??= openThread<DeskTask, DeskReply>(entry);
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
