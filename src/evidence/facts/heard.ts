import type { Statement } from './statements.ts';

/** What one source says in one topic, its repetitions taken together. */
export interface Word {
  readonly source: string;
  readonly key: string;
  readonly weight: number;
}

/** One word for each value that a source names; a source of two minds speaks half for each. */
export function wordsOf(statements: readonly Statement[]): Word[] {
  const heard = new Map<string, Map<string, number>>();
  for (const { source, key, among } of statements) {
    const keys = heard.get(source) ?? new Map<string, number>();
    heard.set(source, keys.set(key, Math.max(keys.get(key) ?? 0, 1 / among)));
  }
  return [...heard].flatMap(([source, keys]) =>
    [...keys].map(([key, weight]) => ({ source, key, weight: weight / keys.size })),
  );
}
