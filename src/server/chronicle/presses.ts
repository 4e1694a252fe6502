import { openThread, type Thread } from '../../host/index.ts';
import type { PressReply, PressTask, PressWord } from './tasks.ts';

/** A thread that makes publications. */
export type Press = Thread<PressTask, PressReply, PressWord>;

/** Opens a press; it starts when it is first needed, since most sessions publish nothing. */
export function openPress(): Press {
  let press: Press | undefined;
  const file = import.meta.url.endsWith('.ts') ? './press-thread.ts' : './press-thread.js';
  return {
    run: (task, signal, hear) => {
      press ??= openThread(new URL(file, import.meta.url));
      return press.run(task, signal, hear);
    },
    close: async () => {
      await press?.close();
    },
  };
}
