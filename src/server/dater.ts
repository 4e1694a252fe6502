import {
  type ClaimsChange,
  compareClaims,
  type Dating,
  type DatingChange,
  withChange,
} from '../dating/index.ts';
import type { Evidence } from '../evidence/index.ts';
import { openThread, type Thread } from '../host/index.ts';

export type Effort = Dating['effort'];

/** Dates evidence without holding up the server; one call of each kind at a time. */
export interface Dater {
  /** Dates the whole. Rejects once `signal` is aborted. */
  date(evidence: Evidence, effort: Effort, signal: AbortSignal): Promise<Dating>;
  /**
   * Dates anew what claims concern that have changed since the whole was last dated, and nothing
   * else; undefined where the whole has to be dated instead.
   */
  redate(evidence: Evidence): Promise<Dating | undefined>;
  close(): Promise<void>;
}

/** What a dating thread is asked for: the whole, or what a change makes of the whole it dated last. */
export type DatingTask =
  | { readonly evidence: Evidence; readonly effort: Effort }
  | { readonly change: ClaimsChange };

/** What a dating thread answers: `dating` of the whole; `change`, if the whole need not be dated. */
export interface DatingReply {
  readonly dating?: Dating;
  readonly change?: DatingChange;
}

type DatingThread = Thread<DatingTask, DatingReply>;

/** A whole that was dated, with the thread that keeps what it learned. */
interface Whole {
  readonly keeper: DatingThread;
  readonly evidence: Evidence;
  readonly dating: Dating;
}

/**
 * Dates in two threads. One keeps what it learned of the whole that was dated last, and dates changes
 * by that; the other dates the next whole, and then they change places. So a dating of the whole that
 * is ended takes nothing of the last one with it.
 */
export function threadedDater(): Dater {
  const entry = new URL(
    import.meta.url.endsWith('.ts') ? './dating-thread.ts' : './dating-thread.js',
    import.meta.url,
  );
  const threads: readonly DatingThread[] = [openThread(entry), openThread(entry)];
  let last: Whole | undefined;
  return {
    date: async (evidence, effort, signal) => {
      const keeper = threads.find((thread) => thread !== last?.keeper)!;
      const { dating } = await keeper.run({ evidence, effort }, signal);
      last = { keeper, evidence, dating: dating! };
      return dating!;
    },
    redate: async (evidence) => {
      if (!last) return undefined;
      const claims = compareClaims(last.evidence, evidence);
      if (!claims) return undefined;
      const { change } = await last.keeper.run({ change: claims });
      return change && withChange(last.dating, change);
    },
    close: async () => {
      await Promise.all(threads.map((thread) => thread.close()));
    },
  };
}
