import { Cancelled } from '../../host/index.ts';
import type { Session, Shown } from '../session.ts';

/** Something that is reckoned once for each state of the open dossier; an older reckoning is ended. */
export class PerState<T> {
  readonly #session: Session;
  readonly #make: (shown: Shown, signal: AbortSignal) => Promise<T>;
  #version = -1;
  #made: Promise<T> | undefined;
  #work = new AbortController();

  constructor(session: Session, make: (shown: Shown, signal: AbortSignal) => Promise<T>) {
    this.#session = session;
    this.#make = make;
  }

  /** That of the newest state, as soon as it is there. */
  async newest(): Promise<T> {
    for (;;) {
      const shown = await this.#session.shown();
      try {
        return await this.#of(shown);
      } catch (error) {
        if (!(error instanceof Cancelled)) throw error;
      }
    }
  }

  #of(shown: Shown): Promise<T> {
    if (this.#made && this.#version >= shown.version) return this.#made;
    this.#work.abort();
    this.#work = new AbortController();
    this.#version = shown.version;
    const made = this.#after(this.#made, shown, this.#work.signal);
    this.#made = made;
    made.catch(() => {
      if (this.#made === made) this.#made = undefined;
    });
    return made;
  }

  /** A thread takes one task at a time: the ended one has to leave it first. */
  async #after(before: Promise<T> | undefined, shown: Shown, signal: AbortSignal): Promise<T> {
    await before?.catch(() => undefined);
    return await this.#make(shown, signal);
  }
}
