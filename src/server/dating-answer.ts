import type { Dating } from '../dating/index.ts';
import type { Effort } from './dater.ts';
import type { Session } from './session.ts';

/** Longest time (ms) that a request waits for a dating before it is told to ask again. */
export const WAIT_AT_MOST = 60_000;

/**
 * The dating of the newest version at the effort asked for, as soon as there is one; null after
 * `waitAtMost` ms. Throws what ended the dating, where it gave up.
 */
export async function datingOf(
  session: Session,
  effort: Effort,
  signal: AbortSignal,
  waitAtMost: number = WAIT_AT_MOST,
): Promise<{ version: number; dating: Dating | null }> {
  const over = AbortSignal.any([signal, AbortSignal.timeout(waitAtMost)]);
  for (;;) {
    const { version, dated } = session;
    if (dated?.version === version) {
      const dating = dated[effort];
      if (dating) return { version, dating };
      if (dated.trouble !== undefined) throw new Error(dated.trouble);
    }
    if (over.aborted) return { version, dating: null };
    await nextEvent(session, over);
  }
}

async function nextEvent(session: Session, over: AbortSignal): Promise<void> {
  await new Promise<void>((resolve) => {
    const end = () => {
      quiet();
      over.removeEventListener('abort', end);
      resolve();
    };
    const quiet = session.events.listen(end);
    over.addEventListener('abort', end);
  });
}
