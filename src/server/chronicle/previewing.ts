import { randomBytes } from 'node:crypto';
import type { Language } from '../../chronicle/index.ts';
import { Cancelled } from '../../host/index.ts';
import type { Files } from '../../press/index.ts';
import type { Session } from '../session.ts';
import { openPress, type Press } from './presses.ts';
import type { PressTask, Told } from './tasks.ts';

/** Files that were made to be looked at, under an address that nobody can guess. */
export interface Proof {
  readonly version: number;
  readonly key: string;
  readonly files: Files;
  /** What was left out, and why. */
  readonly left: readonly string[];
}

type Wish =
  | { readonly do: 'site' }
  | { readonly do: 'documents'; readonly language: Language }
  | { readonly do: 'stills'; readonly printing: string; readonly language: Language };

/** Proofs that are kept at once; stills of one printing weigh some 3 MB, documents of one language 10. */
const KEPT = 8;

/** Makes proofs of pages, documents and stills in a thread and keeps them in memory while the dossier stays as it is. */
export class Previewing {
  readonly #session: Session;
  readonly #kept = new Map<string, Promise<Proof>>();
  /** By key, the oldest first. */
  readonly #shelf = new Map<string, Proof & { readonly name: string }>();
  #version = -1;
  #stop = new AbortController();
  #last: Promise<unknown> = Promise.resolve();
  #press: Press | undefined;

  constructor(session: Session) {
    this.#session = session;
  }

  /** A proof of the newest state, as soon as it is made. */
  async proof(prices: boolean, wish: Wish): Promise<Proof> {
    for (;;) {
      const { version, opened } = await this.#session.shown();
      try {
        return await this.#of({ folder: opened.folder, version, prices }, wish);
      } catch (error) {
        if (!(error instanceof Cancelled)) throw error;
      }
    }
  }

  /** A file of a proof; undefined where it is not, or no longer, there. */
  file(key: string, name: string): Uint8Array | string | undefined {
    return this.#shelf.get(key)?.files.get(name);
  }

  async close(): Promise<void> {
    await this.#press?.close();
  }

  #of(told: Told, wish: Wish): Promise<Proof> {
    if (told.version !== this.#version) this.#begin(told.version);
    const name = JSON.stringify([told.prices, wish]);
    const known = this.#kept.get(name);
    if (known) return known;
    const made = this.#make(name, { ...told, ...wish });
    this.#kept.set(name, made);
    made.catch(() => this.#kept.delete(name));
    return made;
  }

  /** Proofs of an earlier state are let go; what is at work on one is ended. */
  #begin(version: number): void {
    this.#version = version;
    this.#stop.abort();
    this.#stop = new AbortController();
    this.#kept.clear();
  }

  /** The thread takes one task at a time. */
  async #make(name: string, task: PressTask): Promise<Proof> {
    const { signal } = this.#stop;
    const before = this.#last;
    const left: string[] = [];
    const work = before.then(() => {
      if (signal.aborted) throw new Cancelled();
      this.#press ??= openPress();
      return this.#press.run(task, signal, (word) => {
        if ('left' in word) left.push(word.left);
      });
    });
    this.#last = work.catch(() => undefined);
    const { files = new Map() } = await work;
    return this.#keep(name, { version: task.version, key: keyOf(), files, left });
  }

  /** Earlier states leave the shelf once there is something newer to look at. */
  #keep(name: string, proof: Proof): Proof {
    this.#shelf.set(proof.key, { ...proof, name });
    const ofNow = [...this.#shelf.values()].filter(({ version }) => version === proof.version);
    const kept = new Set(ofNow.slice(-KEPT).map(({ key }) => key));
    for (const one of this.#shelf.values()) {
      if (kept.has(one.key)) continue;
      this.#shelf.delete(one.key);
      if (one.version === this.#version) this.#kept.delete(one.name);
    }
    return proof;
  }
}

function keyOf(): string {
  return randomBytes(16).toString('base64url');
}
