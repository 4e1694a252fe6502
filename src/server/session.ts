import type { WireChange, WireEvent } from '../contract/index.ts';
import type { Dossier } from '../dossier/index.ts';
import { type Watch, watchFolder } from '../host/index.ts';
import { type Outcome, type Store, UnwritableError } from '../store/index.ts';
import type { Dater } from './dater.ts';
import { type Dated, type DatingRun, datingRun } from './dating-run.ts';
import { isTable } from './doors.ts';
import { type Teller, teller } from './events.ts';
import { type Opened, openFolder } from './opened.ts';
import { Refused } from './refusal.ts';

/** What is shown, at one version. */
export interface Shown {
  readonly version: number;
  readonly opened: Opened;
  readonly dossier: Dossier;
}

/** What came of a change, an undo, a redo or a settling. */
export interface Made {
  readonly version: number;
  readonly conflicts: Outcome['conflicts'];
}

/**
 * The dossier that is open, its version, and its dating. The version grows with every change of
 * what is shown; after each the files are read and dated anew, and all who listen are told.
 */
export class Session {
  version = 0;
  /** The newest dating of the open dossier, of this version or an earlier one. */
  dated: Dated | undefined;
  readonly events: Teller<WireEvent> = teller();
  #opened: Opened;
  #openedAt = 0;
  #watch: Watch;
  #shown: Shown | undefined;
  #reading: Promise<Shown> | undefined;
  readonly #run: DatingRun;
  readonly #dater: Dater;
  /** Why the files could not be read or written when that was last tried. */
  #trouble: string | undefined;
  #opening: Promise<unknown> = Promise.resolve();
  #closed = false;

  constructor(opened: Opened, dater: Dater) {
    this.#opened = opened;
    this.#dater = dater;
    this.#run = datingRun(dater, (dated) => this.#note(dated));
    this.#watch = this.#watchOver(opened);
    this.#renew(false);
  }

  /** Things the collector has to know about the open dossier. */
  get notices(): readonly string[] {
    const { notices } = this.#opened;
    return this.#trouble === undefined ? notices : [...notices, this.#trouble];
  }

  get opened(): Opened {
    return this.#opened;
  }

  /** Where things stand, for one who begins to listen. */
  state(): WireEvent {
    const dated = this.dated?.version === this.version ? this.dated : undefined;
    const dating = dated?.refined ? 'refined' : dated?.first ? 'first' : 'none';
    const trouble = dated?.trouble === undefined ? {} : { trouble: dated.trouble };
    return { version: this.version, dating, outside: false, ...trouble };
  }

  /** The dossier of the newest version, read once for each. */
  async shown(): Promise<Shown> {
    if (this.#shown?.version === this.version) return this.#shown;
    this.#reading ??= this.#read().finally(() => {
      this.#reading = undefined;
    });
    return await this.#reading;
  }

  /** Makes changes as one step. Throws `Refused` where the page shows another dossier. */
  async change(version: number, label: string, changes: readonly WireChange[]): Promise<Made> {
    if (version < this.#openedAt) {
      throw new Refused('other-dossier', 'Another dossier was opened meanwhile: look at it first.');
    }
    for (const { file } of changes) {
      if (!isTable(file)) throw new Refused('bad-request', `${file} is no table of a dossier.`);
    }
    return await this.#make((store) => store.change(label, changes));
  }

  /** Keeps what was marked on a copy of the dossier in `folder`, as one step. */
  async keepExamination(label: string, folder: string, copy: string, after: string): Promise<Made> {
    if (folder !== this.#opened.folder) {
      throw new Refused('other-dossier', 'Another dossier was opened meanwhile: look at it first.');
    }
    const file = `desk/examinations/${copy}.json`;
    return await this.#make(async (store) => {
      const text = (await this.#opened.textOf(file)) ?? '{}\n';
      const change = { file, op: 'replace', before: { text }, after: { text: after } } as const;
      return await store.change(label, [change]);
    });
  }

  /** Takes the last step back, or takes it again. */
  async move(way: 'undo' | 'redo'): Promise<Made> {
    return await this.#make((store) => store[way]());
  }

  /** Settles an acknowledged change that its file could not take. */
  async settle(id: number, keep: 'mine' | 'theirs'): Promise<Made> {
    return await this.#make((store) => store.settle(id, keep));
  }

  /** Looks for edits made outside; all are told where there are some. */
  async look(): Promise<void> {
    const { store } = this.#opened;
    if (!store) return;
    try {
      if ((await store.look()).length > 0) this.#renew(true);
      this.#trouble = undefined;
    } catch (error) {
      this.#trouble = error instanceof Error ? error.message : String(error);
    }
  }

  /** Opens another folder in the place of this one, which is closed. */
  async open(path: string): Promise<void> {
    const opening = this.#opening.then(() => this.#open(path));
    this.#opening = Promise.allSettled([opening]);
    await opening;
  }

  async #open(path: string): Promise<void> {
    const isSame = path === this.#opened.folder;
    const next = isSame ? this.#opened : await openFolder(path);
    if (next.folder === this.#opened.folder) return await this.look();
    const last = this.#opened;
    this.#watch.close();
    this.#opened = next;
    this.#openedAt = this.version + 1;
    this.dated = undefined;
    this.#trouble = undefined;
    this.#watch = this.#watchOver(next);
    this.#renew(false);
    await last.close();
  }

  async close(): Promise<void> {
    this.#closed = true;
    this.#watch.close();
    await this.#run.stop();
    await this.#dater.close();
    await this.#opened.close();
  }

  async #make(work: (store: Store) => Promise<Outcome>): Promise<Made> {
    const { store } = this.#opened;
    if (!store) {
      throw new Refused('read-only', this.#opened.notices[0] ?? 'This dossier can only be read.');
    }
    const outcome = await work(store).catch((error: unknown) => {
      if (error instanceof UnwritableError) throw new Refused('cannot-write', error.message);
      throw error;
    });
    const written = await outcome.written;
    this.#trouble = written.ok ? undefined : written.reason;
    const edited = outcome.edited.length > 0;
    if (edited || outcome.conflicts.length === 0) this.#renew(edited);
    return { version: this.version, conflicts: outcome.conflicts };
  }

  /** What is shown has changed: read and date it anew, and tell all. */
  #renew(outside: boolean): void {
    this.version += 1;
    this.events.tell({ version: this.version, dating: 'none', outside });
    void this.shown().catch((error: Error) => {
      const { version } = this;
      this.events.tell({ version, dating: 'none', outside: false, trouble: error.message });
    });
  }

  async #read(): Promise<Shown> {
    for (;;) {
      const { version } = this;
      const opened = this.#opened;
      const dossier = await opened.read();
      if (version !== this.version) continue;
      this.#shown = { version, opened, dossier };
      if (!this.#closed) this.#run.start(version, dossier.evidence);
      return this.#shown;
    }
  }

  #note(dated: Dated): void {
    if (dated.version !== this.version) return;
    this.dated = dated;
    this.events.tell(this.state());
  }

  #watchOver(opened: Opened): Watch {
    return watchFolder(opened.folder, ['desk'], () => {
      if (opened.store) void this.look();
      else this.#renew(true);
    });
  }
}
