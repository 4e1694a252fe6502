import type { Dating } from '../dating/index.ts';
import type { Evidence } from '../evidence/index.ts';
import type { Dater, Effort } from './dater.ts';

/** How far the dating of one version has come. */
export interface Dated {
  readonly version: number;
  readonly first?: Dating;
  readonly refined?: Dating;
  /** Why it gave up. */
  readonly trouble?: string;
}

/**
 * Dates the newest evidence, first quickly and then well; newer work ends the older. The first answer
 * dates anew only what changed claims concern, where that will do.
 */
export interface DatingRun {
  start(version: number, evidence: Evidence): void;
  stop(): Promise<void>;
}

/** Makes a run over a dater; `tell` hears of every state, in order. */
export function datingRun(dater: Dater, tell: (dated: Dated) => void): DatingRun {
  let running = Promise.resolve();
  let controller = new AbortController();
  const run = async (version: number, evidence: Evidence, signal: AbortSignal) => {
    let dated: Dated = { version };
    for (const effort of ['first', 'refined'] satisfies Effort[]) {
      if (signal.aborted) return;
      try {
        const soon = effort === 'first' ? await dater.redate(evidence) : undefined;
        if (signal.aborted) return;
        dated = { ...dated, [effort]: soon ?? (await dater.date(evidence, effort, signal)) };
      } catch (error) {
        if (signal.aborted) return;
        dated = { ...dated, trouble: error instanceof Error ? error.message : String(error) };
      }
      if (signal.aborted) return;
      tell(dated);
      if (dated.trouble !== undefined) return;
    }
  };
  return {
    start: (version, evidence) => {
      controller.abort();
      controller = new AbortController();
      const { signal } = controller;
      running = running.then(() => run(version, evidence, signal));
    },
    stop: async () => {
      controller.abort();
      await running;
    },
  };
}
