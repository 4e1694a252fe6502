import { isDeepStrictEqual } from 'node:util';
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
 * dates anew only what changed claims concern, where that will do. A version of the same evidence,
 * as after a mark on a copy, takes over what is known and what is still being dated.
 */
export interface DatingRun {
  start(version: number, evidence: Evidence): void;
  stop(): Promise<void>;
}

/** One evidence, how far its dating has come, and for which version. */
interface Work {
  readonly evidence: Evidence;
  readonly controller: AbortController;
  dated: Dated;
}

/** Makes a run over a dater; `tell` hears of every state, in order. */
export function datingRun(dater: Dater, tell: (dated: Dated) => void): DatingRun {
  let running = Promise.resolve();
  let newest: Work | undefined;
  const dateAt = async ({ evidence, controller: { signal } }: Work, effort: Effort) => {
    const soon = effort === 'first' ? await dater.redate(evidence) : undefined;
    if (soon || signal.aborted) return soon;
    return await dater.date(evidence, effort, signal);
  };
  const run = async (work: Work) => {
    const { signal } = work.controller;
    for (const effort of ['first', 'refined'] satisfies Effort[]) {
      if (signal.aborted) return;
      let found: Partial<Dated>;
      try {
        const dating = await dateAt(work, effort);
        found = dating ? { [effort]: dating } : {};
      } catch (error) {
        found = { trouble: error instanceof Error ? error.message : String(error) };
      }
      if (signal.aborted) return;
      work.dated = { ...work.dated, ...found };
      tell(work.dated);
      if (work.dated.trouble !== undefined) return;
    }
  };
  return {
    start: (version, evidence) => {
      const goesOn = newest !== undefined && newest.dated.trouble === undefined;
      if (newest && goesOn && isDeepStrictEqual(newest.evidence, evidence)) {
        newest.dated = { ...newest.dated, version };
        if (newest.dated.first) tell(newest.dated);
        return;
      }
      newest?.controller.abort();
      const work: Work = { evidence, controller: new AbortController(), dated: { version } };
      newest = work;
      running = running.then(() => run(work));
    },
    stop: async () => {
      newest?.controller.abort();
      await running;
    },
  };
}
