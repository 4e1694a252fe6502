import type { Dating } from '../dating/index.ts';
import type { Evidence } from '../evidence/index.ts';
import { openThread, type Thread } from '../host/index.ts';

export type Effort = Dating['effort'];

/** Dates evidence without holding up the server. */
export interface Dater {
  /** Rejects once `signal` is aborted; one call at a time for each effort. */
  date(evidence: Evidence, effort: Effort, signal: AbortSignal): Promise<Dating>;
  close(): Promise<void>;
}

type DatingThread = Thread<{ readonly evidence: Evidence; readonly effort: Effort }, Dating>;

/** Dates in two threads, one for the answer that is wanted soon and one for the refined answer. */
export function threadedDater(): Dater {
  const entry = new URL(
    import.meta.url.endsWith('.ts') ? './dating-thread.ts' : './dating-thread.js',
    import.meta.url,
  );
  const threads: Record<Effort, DatingThread> = {
    first: openThread(entry),
    refined: openThread(entry),
  };
  return {
    date: (evidence, effort, signal) => threads[effort].run({ evidence, effort }, signal),
    close: async () => {
      await Promise.all([threads.first.close(), threads.refined.close()]);
    },
  };
}
