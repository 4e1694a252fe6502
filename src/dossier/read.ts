import { DATE_PROPERTIES } from '../evidence/index.ts';
import { datesRead, type Surroundings } from './cell-types.ts';
import { rowCheck, type Wanted } from './check-rows.ts';
import { checkDocument, isDocument, isStory, takeDocument, takeText } from './documents.ts';
import { evidenceOf } from './evidence.ts';
import { FATE, FaultList } from './faults.ts';
import { idsOf } from './ids.ts';
import { LIMITS } from './limits.ts';
import { manifestOf } from './manifest.ts';
import { isSafeName } from './names.ts';
import { printingIds } from './printing-ids.ts';
import type { ReadTable } from './read-table.ts';
import { specOf, TABLES, type TableSpec } from './schema.ts';
import type { ColumnType } from './schema-types.ts';
import { takeTable } from './take-table.ts';
import type { Dossier, DossierFiles } from './types.ts';

/**
 * Reads a whole dossier: every fault in it is listed, and what can be used is used. A fault in an id
 * or another cell that its row hangs on spoils the row, elsewhere only the cell. Throws nothing of
 * its own for bad data; a file that cannot be opened is a fault too.
 */
export async function readDossier(files: DossierFiles): Promise<Dossier> {
  const reader = new DossierReader(files);
  await reader.readTables();
  await reader.readDocuments();
  return reader.dossier();
}

class DossierReader {
  readonly #files: DossierFiles;
  readonly #names: ReadonlySet<string>;
  readonly #faults = new FaultList();
  readonly #tables = new Map<string, ReadTable>();
  readonly #ids = new Map<string, ReadonlyMap<string, number>>();
  readonly #documents = new Map<string, unknown>();
  readonly #texts = new Map<string, string>();
  readonly #date = datesRead();
  readonly #around: Surroundings = {
    date: this.#date,
    isProperty: (text) => this.#properties().has(text),
    isKnown: (to, id) => to.some((file) => this.#ids.get(file)?.has(id) ?? true),
  };
  #known: ReadonlySet<string> | undefined;

  constructor(files: DossierFiles) {
    this.#files = files;
    this.#names = new Set(files.names.filter((name) => this.#isInside(name)));
  }

  #isInside(name: string): boolean {
    if (isSafeName(name)) return true;
    const expected = 'a name inside the folder';
    this.#faults.add({ file: name, found: name, expected, fate: FATE.file });
    return false;
  }

  /** Tables with ids first, since the others refer to them. */
  async readTables(): Promise<void> {
    const hasIds = (spec: TableSpec) => spec.must.has('id');
    const withIds = TABLES.filter(hasIds);
    for (const spec of withIds) await this.#readTable(spec, (type) => type.is !== 'ref');
    for (const { file } of withIds) {
      const table = this.#tables.get(file);
      if (table !== undefined) this.#ids.set(file, idsOf(table, this.#faults));
    }
    for (const spec of withIds) this.#checkReferences(spec);
    // The other cells of claims are looked at when evidence is made of them.
    const wanted = (spec: TableSpec) => (type: ColumnType) =>
      spec.file !== 'claims.csv' || type.is === 'edtf';
    for (const spec of TABLES) if (!hasIds(spec)) await this.#readTable(spec, wanted(spec));
  }

  async #readTable(spec: TableSpec, wanted: Wanted): Promise<void> {
    const { file } = spec;
    if (!this.#names.has(file)) {
      if (file === 'printings.csv') {
        const expected = 'a table of the printings, with the column id';
        this.#faults.add({ file, found: 'no such file', expected, fate: NOTHING });
      }
      return;
    }
    const check = rowCheck(spec, this.#around, this.#faults, wanted);
    await this.#opened(file, async (pieces) => {
      const table = await takeTable(spec, pieces, check, this.#faults);
      if (table !== undefined) this.#tables.set(file, table);
    });
  }

  #checkReferences(spec: TableSpec): void {
    const table = this.#tables.get(spec.file);
    if (table === undefined) return;
    const check = rowCheck(spec, this.#around, this.#faults, (type) => type.is === 'ref')(table);
    for (const row of table.rows()) {
      if (!check(row, table.at(row), false, table)) table.leaveOut(row);
    }
  }

  async readDocuments(): Promise<void> {
    for (const name of [...this.#names].sort()) {
      if (isDocument(name)) {
        await this.#opened(name, async (pieces) => {
          const document = await takeDocument(name, pieces, this.#faults);
          if (document !== undefined) this.#documents.set(name, document);
          checkDocument(name, document, this.#around, this.#faults);
        });
      } else if (isStory(name)) {
        await this.#opened(name, async (pieces) => {
          const text = await takeText(name, pieces, LIMITS.text, this.#faults);
          if (text !== undefined) this.#texts.set(name, text);
        });
      }
    }
  }

  /** Opens a file; that it cannot be read is a fault like others. */
  async #opened(file: string, take: (pieces: AsyncIterable<Uint8Array>) => Promise<void>) {
    const failures: unknown[] = [];
    await take(watched(() => this.#files.open(file), failures));
    for (const failure of failures) {
      const found = `an error (${codeOf(failure)})`;
      this.#faults.add({ file, found, expected: 'a file that can be read', fate: FATE.rest });
    }
  }

  #properties(): ReadonlySet<string> {
    this.#known ??= new Set(
      [
        ...DATE_PROPERTIES,
        'print-run',
        'exists',
        ...(specOf('printings.csv')?.columns.keys() ?? []),
        ...(this.#tables.get('printings.csv')?.columns ?? []),
      ].filter((name) => name !== 'id'),
    );
    return this.#known;
  }

  dossier(): Dossier {
    const faults = this.#faults;
    const tables = this.#tables;
    const known = this.#ids.get('printings.csv') ?? new Map<string, number>();
    const printings = printingIds(tables.get('printings.csv'), known, faults);
    const manifest = manifestOf(this.#documents.get('dossier.json'), 'dossier.json', faults);
    const evidence = evidenceOf({ tables, printings, around: this.#around, faults });
    return {
      manifest,
      tables,
      documents: this.#documents,
      texts: this.#texts,
      forwards: printings.forwards,
      evidence,
      faults: faults.sorted(),
    };
  }
}

const NOTHING = 'Without it there is nothing to date.';

/** The pieces of a file up to a failure, which is kept. */
async function* watched(
  open: () => AsyncIterable<Uint8Array>,
  failures: unknown[],
): AsyncGenerator<Uint8Array> {
  try {
    yield* open();
  } catch (failure) {
    failures.push(failure);
  }
}

function codeOf(failure: unknown): string {
  if (failure instanceof Error && 'code' in failure) return String(failure.code);
  return failure instanceof Error ? failure.name : 'unknown';
}
