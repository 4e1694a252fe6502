import type { Evidence } from '../types.ts';
import { keyOf } from './normal.ts';
import type { Topic } from './statements.ts';

/** The values of one property in the whole dossier. */
export interface Vocabulary {
  readonly group: number;
  /** Index of each value that some claim or compared row names. */
  readonly values: ReadonlyMap<string, number>;
  /** Values there may be: those in claims and rows and one that nobody names; 2 for `exists`. */
  readonly size: number;
}

/** The values among which sources may err, by property. */
export function vocabularies(
  { printings }: Evidence,
  topics: readonly Topic[],
): Map<string, Vocabulary> {
  const named = new Map<string, Map<string, number>>();
  for (const { property, statements } of topics) {
    const values = named.get(property) ?? new Map<string, number>();
    for (const { key } of statements) if (!values.has(key)) values.set(key, values.size);
    named.set(property, values);
  }
  return new Map(
    [...named].map(([property, values], group) => {
      const column = printings.flatMap((printing) => {
        const cell = new Map<string, string | undefined>(Object.entries(printing)).get(property);
        return cell === undefined ? [] : [keyOf(cell)];
      });
      const all = new Set([...column, ...values.keys()]).size;
      const size = property === 'exists' ? Math.max(2, values.size) : Math.max(2, all) + 1;
      return [property, { group, values, size }];
    }),
  );
}
