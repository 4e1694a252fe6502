import { recordsOf } from '../../dossier/index.ts';
import { openThread, type Thread } from '../../host/index.ts';
import type { Population } from '../../population/index.ts';
import type { Session, Shown } from '../session.ts';
import type { Counted } from './counted.ts';
import type { CountTask } from './counts-thread.ts';
import { PerState } from './per-state.ts';

/** Counts the open dossier in a thread of its own, once for each state of it. */
export class Counting {
  readonly #counted: PerState<Counted>;
  #thread: Thread<CountTask, Population> | undefined;

  constructor(session: Session) {
    this.#counted = new PerState(session, (shown, signal) => this.#count(shown, signal));
  }

  /** The populations of the newest state, as soon as they are counted. */
  async counted(): Promise<Counted> {
    return await this.#counted.newest();
  }

  async close(): Promise<void> {
    await this.#thread?.close();
  }

  async #count(shown: Shown, signal: AbortSignal): Promise<Counted> {
    const { records } = recordsOf(shown.dossier);
    this.#thread ??= openThread(entry());
    const task = { records, evidence: shown.dossier.evidence };
    return { shown, records, answer: await this.#thread.run(task, signal) };
  }
}

function entry(): URL {
  const file = import.meta.url.endsWith('.ts') ? './counts-thread.ts' : './counts-thread.js';
  return new URL(file, import.meta.url);
}
