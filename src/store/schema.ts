import type { Generated } from 'kysely';

/** The tables of the journal, as the newest migration leaves them. */
export interface JournalTables {
  steps: StepsTable;
  parts: PartsTable;
  writes: WritesTable;
  files: FilesTable;
}

/** One change that the collector made, or one edit that was found. */
interface StepsTable {
  id: Generated<number>;
  at: string;
  label: string;
  kind: 'change' | 'outside';
  state: 'done' | 'undone' | 'dropped';
}

/** What a step did to one file, there and back, each as JSON of a list of changes. */
interface PartsTable {
  id: Generated<number>;
  step: number;
  file: string;
  forward: string;
  inverse: string;
}

/** A file that has still to follow the journal. */
interface WritesTable {
  id: Generated<number>;
  step: number;
  file: string;
  changes: string;
  inverse: string;
  before_hash: string;
  after_hash: string;
  /** JSON of the conflicts that keep the file from following; null where it can. */
  conflicts: string | null;
}

/** A file as it was last read or written, deflated; `content` is null where it is too large to keep. */
interface FilesTable {
  name: string;
  hash: string;
  content: Uint8Array | null;
}
