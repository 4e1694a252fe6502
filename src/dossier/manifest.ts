import { FATE, type FaultList } from './faults.ts';
import type { Manifest } from './types.ts';

/** The newest format of a dossier, which is written and which the rest of the program knows. */
export const FORMAT = 1;

type Json = Readonly<Record<string, unknown>>;

/** Steps from each format to the next; every dossier ever written can be read. */
const LIFTS: readonly ((old: Json) => Json)[] = [liftFrom0];

/** Format 0, before the first release: `name` for `title`, the card's size as `size`, `[63, 88]`. */
function liftFrom0(old: Json): Json {
  const { name, size, ...rest } = old;
  const [width, height] = Array.isArray(size) ? size : [];
  const lifted: Json = { title: name, width_mm: width, height_mm: height };
  const known = Object.entries(lifted).filter(([, value]) => value !== undefined);
  return { ...Object.fromEntries(known), ...rest, format: 1 };
}

const EMPTY: Manifest = {
  format: FORMAT,
  title: '',
  subject: '',
  language: '',
  width_mm: null,
  height_mm: null,
};

/** What `dossier.json` says; undefined where there is none. */
export function manifestOf(document: unknown, file: string, faults: FaultList): Manifest {
  if (document === undefined) return EMPTY;
  if (!isObject(document)) {
    const found = Array.isArray(document) ? 'a list' : String(document);
    faults.add({ file, found, expected: 'an object with title and subject', fate: FATE.file });
    return EMPTY;
  }
  const lifted = lift(document, file, faults);
  const reader = new ManifestReader(lifted, file, faults);
  return {
    format: FORMAT,
    title: reader.text('title'),
    subject: reader.text('subject'),
    language: reader.language(),
    width_mm: reader.length('width_mm'),
    height_mm: reader.length('height_mm'),
  };
}

/** Whether a value parsed from JSON is an object with keys. */
export function isObject(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function lift(document: Json, file: string, faults: FaultList): Json {
  const written = Object.hasOwn(document, 'format') ? document.format : 0;
  const format = Number(written);
  if (!Number.isInteger(format) || format < 0 || format > FORMAT) {
    const found = String(written);
    const expected = `a format from 0 to ${FORMAT}`;
    faults.add({ file, column: 'format', found, expected, fate: `It is read as ${FORMAT}.` });
    return document;
  }
  return LIFTS.slice(format).reduce((old, step) => step(old), document);
}

class ManifestReader {
  readonly #document: Json;
  readonly #file: string;
  readonly #faults: FaultList;

  constructor(document: Json, file: string, faults: FaultList) {
    this.#document = document;
    this.#file = file;
    this.#faults = faults;
  }

  #value(key: string): unknown {
    return Object.hasOwn(this.#document, key) ? (this.#document[key] ?? '') : '';
  }

  #fault(column: string, value: unknown, expected: string): void {
    const found = isObject(value) || Array.isArray(value) ? JSON.stringify(value) : String(value);
    this.#faults.add({ file: this.#file, column, found, expected, fate: FATE.cell });
  }

  text(key: string): string {
    const value = this.#value(key);
    if (typeof value === 'string') return value;
    this.#fault(key, value, 'text in quotes');
    return '';
  }

  language(): string {
    const value = this.text('language');
    if (value === '' || /^[a-z]{2,3}(-[a-z\d]{1,8})*$/i.test(value)) return value;
    this.#fault('language', value, 'a language tag of BCP 47, such as fi or pt-BR');
    return '';
  }

  length(key: string): number | null {
    const value = this.#value(key);
    if (value === '') return null;
    if (typeof value === 'number' && value > 0) return value;
    this.#fault(key, value, 'a length in mm above 0');
    return null;
  }
}
