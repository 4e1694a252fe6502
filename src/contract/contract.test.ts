import { describe, expect, it } from 'vitest';
import type { Dating } from '../dating/index.ts';
import type { Fact, NotesReading } from '../evidence/index.ts';
import {
  ChangeSchema,
  ChangesRequestSchema,
  DatingSchema,
  type NotesAnswer,
  type WireDating,
  type WireFact,
} from './index.ts';

type Frozen<T> = T extends readonly unknown[]
  ? { readonly [K in keyof T]: Frozen<T[K]> }
  : T extends object
    ? { readonly [K in keyof T]: Frozen<T[K]> }
    : T;
type Same<A, B> =
  (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : { step: A; wire: B };

// These do not compile where the step and the wire part ways.
const sameShape: Same<Frozen<Dating>, Frozen<WireDating>> = true;
const sameFact: Same<Frozen<Fact>, Frozen<WireFact>> = true;
// Columns of a printing that a line tells are its own on one side, any on the other.
const notesFit: NotesReading extends Frozen<NotesAnswer> ? true : false = true;
// @ts-expect-error a dating without its printings is another shape
const otherShape: Same<Frozen<Omit<Dating, 'printings'>>, Frozen<WireDating>> = true;

const dating: Dating = {
  printings: [
    {
      id: '__proto__',
      best: '1996-05-03',
      edtf: '1996-05-03',
      p_best: 0.9,
      interval95: ['1996-05-03', '1996-05-10'],
      p_interval: 0.97,
      days: [['1996-05-03', 0.9]],
      state: 'day',
      modes: [],
      together: [],
      claims: [],
      why: '',
    },
  ],
  order: ['__proto__'],
  first: [{ id: '__proto__', p: 1 }],
  sequences: [],
  sources: [],
  weekdays: [],
  leads: [],
  monte_carlo_error: 0,
  seed: 1,
  effort: 'first',
};

describe('the shapes on the wire', () => {
  it('carry a dating unchanged through JSON, odd ids included', () => {
    expect(sameShape && sameFact && notesFit && otherShape).toBe(true);
    expect(DatingSchema.parse(JSON.parse(JSON.stringify(dating)))).toEqual(dating);
  });

  it('refuse a probability over one and a reading that does not exist', () => {
    const wrong = { ...dating, first: [{ id: 'a', p: 1.01 }], effort: 'best' };
    const paths = DatingSchema.safeParse(wrong).error?.issues.map((issue) => issue.path.join('.'));
    expect(paths).toEqual(['first.0.p', 'effort']);
  });

  it('refuse a change without label, with an unknown operation or a row 0', () => {
    const body = { version: 1, label: '', changes: [] };
    expect(ChangesRequestSchema.safeParse(body).error?.issues).toHaveLength(2);
    expect(ChangeSchema.safeParse({ file: 'claims.csv', op: 'drop' }).success).toBe(false);
    const after = { value: '1996' };
    const add = { file: 'claims.csv', op: 'add', after };
    expect(ChangeSchema.safeParse({ ...add, row: 0 }).success).toBe(false);
    expect(ChangeSchema.safeParse({ file: 'claims.csv', op: 'add' }).success).toBe(false);
    expect(ChangeSchema.safeParse({ ...add, op: 'replace' }).success).toBe(false);
    expect(
      ChangeSchema.safeParse({ file: 'claims.csv', op: 'add', after: { value: '1996' } }).success,
    ).toBe(true);
  });
});
