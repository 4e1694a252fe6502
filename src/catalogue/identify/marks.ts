import { type NamedBy, nameOfCode } from '../names.ts';
import { inMeasure, type TraitValue } from '../traits/value.ts';
import { keyOf } from '../traits/words.ts';
import type { Printing } from '../types.ts';
import type { CounterfeitKind, Hypothesis, Trait, TraitRow } from './types.ts';

/** All that a copy may be, and the traits by which that is told. */
export interface Marks {
  /** Printings, then counterfeits and alterations, the unlisted rest last. */
  readonly hypotheses: readonly Hypothesis[];
  readonly traits: ReadonlyMap<string, Trait>;
}

/** Columns of a printing that are traits too; `false`: no look at a card tells it. */
const COLUMNS: Readonly<Record<string, boolean>> = {
  language: true,
  number: true,
  finish: true,
  edition: true,
  art: true,
  printed_name: true,
  rarity: true,
  wave: false,
  product: false,
  market: false,
  channel: false,
  reading: false,
  also_called: false,
  printed_in: false,
};

/** The name under which a trait is kept: `printed name` and `printed_name` are one. */
export function traitName(name: string): string {
  const key = keyOf(name);
  const column = key.replaceAll(' ', '_');
  return Object.hasOwn(COLUMNS, column) ? column : key;
}

/** A trait as it is said: columns without their underline. */
export function sayTrait(name: string): string {
  return name.replaceAll('_', ' ');
}

/** Lays out the traits over all that a copy may be. */
export function marksOf(
  printings: readonly Printing[],
  counterfeits: readonly CounterfeitKind[],
  rows: readonly TraitRow[],
): Marks {
  const hypotheses = hypothesesOf(printings, counterfeits);
  const traits = new Map<string, Trait>();
  const byTrait = groupsBy(rows, ({ trait }) => traitName(trait));
  const byId = new Map(printings.map((one) => [one.id, one]));
  for (const column of Object.keys(COLUMNS)) {
    const cells = hypotheses.map(({ printing }) => cellOf(byId.get(printing), column));
    if (cells.some((cell) => cell !== undefined) || byTrait.has(column))
      traits.set(column, traitOf(column, byTrait.get(column) ?? [], hypotheses, cells));
  }
  for (const [name, some] of byTrait)
    if (!traits.has(name)) traits.set(name, traitOf(name, some, hypotheses, []));
  return { hypotheses, traits };
}

function hypothesesOf(
  printings: readonly Printing[],
  counterfeits: readonly CounterfeitKind[],
): Hypothesis[] {
  const known = new Set(printings.map(({ id }) => id));
  const kinds = counterfeits.flatMap(({ id, kind, printings: passesFor }) => {
    const those = passesFor.filter((one) => known.has(one));
    return (those.length > 0 ? those : ['']).map((printing) => ({ id, kind, printing }));
  });
  return [
    ...printings.map(({ id }): Hypothesis => ({ id, kind: 'printing', printing: id })),
    ...kinds,
    { id: '', kind: 'unlisted', printing: '' },
  ];
}

function cellOf(printing: Printing | undefined, column: string): TraitValue | undefined {
  const cell = printing?.[column as keyof NamedBy];
  if (cell === undefined || cell === '') return undefined;
  return cell === 'none' ? { is: 'none' } : { is: 'word', word: cell };
}

function traitOf(
  name: string,
  rows: readonly TraitRow[],
  hypotheses: readonly Hypothesis[],
  cells: readonly (TraitValue | undefined)[],
): Trait {
  const told = new Map(rows.flatMap(({ of, value }) => of.map((id) => [id, value] as const)));
  const measure = measureOf(rows);
  const values = hypotheses.map(({ id, printing }, h) => {
    const value = told.get(id) ?? told.get(printing) ?? cells[h];
    return value && measure !== null ? inMeasure(value, measure) : value;
  });
  return {
    name,
    look: commonest(rows.flatMap(({ sees }) => sees ?? [])) ?? 'eye',
    region: commonest(rows.map(({ region }) => region).filter((one) => one !== '')) ?? '',
    values,
    measure,
    publish: rows.every(({ publish }) => publish),
    seen: rows.length > 0 || (COLUMNS[name] ?? true),
  };
}

function groupsBy(
  rows: readonly TraitRow[],
  keyOfRow: (row: TraitRow) => string,
): ReadonlyMap<string, readonly TraitRow[]> {
  const groups = new Map<string, TraitRow[]>();
  for (const row of rows) {
    const group = groups.get(keyOfRow(row));
    if (group) group.push(row);
    else groups.set(keyOfRow(row), [row]);
  }
  return groups;
}

function measureOf(rows: readonly TraitRow[]): string | null {
  const measures = rows.flatMap(({ value }) => (value.is === 'number' ? value.measure : []));
  return commonest(measures) ?? null;
}

function commonest<T>(all: readonly T[]): T | undefined {
  const counts = new Map<T, number>();
  for (const one of all) counts.set(one, (counts.get(one) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a)[0]?.[0];
}

/** A reading of a column as its cells are written: a language or market by its English name. */
export function asWritten(value: TraitValue, { name, values }: Trait): TraitValue {
  if (value.is !== 'word' || (name !== 'language' && name !== 'market')) return value;
  const type = name === 'language' ? 'language' : 'region';
  const wanted = keyOf(value.word);
  for (const one of values) {
    if (one?.is !== 'word') continue;
    const called = keyOf(nameOfCode(one.word, type));
    if (called === wanted || called.replace(/ [^ ]+$/, '') === wanted) return one;
  }
  return value;
}
