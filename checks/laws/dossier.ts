import type { Printing } from '../../src/catalogue/index.ts';
import {
  type Claim,
  type EdtfDate,
  type Evidence,
  type OrderFact,
  parseEdtf,
  type Source,
} from '../../src/evidence/index.ts';

/** Reads a date that a test writes down. Throws RangeError if it is none. */
export function edtf(text: string): EdtfDate {
  const reading = parseEdtf(text);
  if (!reading.ok) throw new RangeError(`not a date: ${text}`);
  return reading.date;
}

/** A claim in short: about printings (`a|b`) or a product (`box:`), by a source, of a value. */
export type Said = readonly [about: string, source: string, value: string, property?: string];

export interface Sketch {
  readonly printings: readonly (string | Printing)[];
  readonly sources: readonly (string | Source)[];
  readonly said: readonly Said[];
  /** `a<b`. */
  readonly orders?: readonly string[];
}

/** Evidence from a sketch; printings without more are one of a product of their own. */
export function dossier({ printings, sources, said, orders = [] }: Sketch): Evidence {
  return {
    printings: printings.map((p) => (typeof p === 'string' ? { id: p, product: `box-${p}` } : p)),
    products: [],
    contents: [],
    sources: sources.map((s) =>
      typeof s === 'string' ? { id: s, kind: 'checklist', cites: [] } : s,
    ),
    claims: said.map(claimOf),
    orders: orders.map((text, j): OrderFact => {
      const [earlier, later] = text.split('<');
      return { row: j + 2, earlier: earlier!, later: later! };
    }),
  };
}

function claimOf([about, source, value, property = 'on-sale']: Said, j: number): Claim {
  const base = { row: j + 2, source, property, value, date: edtf(value) };
  if (about.endsWith(':')) return { ...base, printings: [], product: about.slice(0, -1) };
  return { ...base, printings: about.split('|') };
}

/** Freezes a value and everything in it. */
export function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const part of Object.values(value)) deepFreeze(part);
  return value;
}
