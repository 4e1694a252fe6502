import { useSyncExternalStore } from 'react';
import type { WireSupposed } from '../../contract/index.ts';

/** As the desk has it. */
export const AS_IT_IS: WireSupposed = {
  ...{ fees: [], grades: [], rates: [], prices: [], asked: [], taxRate: null },
};

/** What is asked of the desk: the day, a budget, and what is supposed. None of it is written. */
export interface Asked {
  readonly on: string | undefined;
  readonly budget: number | null;
  readonly supposed: WireSupposed;
}

let now: Asked = { on: undefined, budget: null, supposed: AS_IT_IS };
const listeners = new Set<() => void>();

/** What is asked now, on every screen that decides, and how to ask otherwise. */
export function useAsked(): readonly [Asked, (change: Partial<Asked>) => void] {
  const asked = useSyncExternalStore(listen, () => now);
  return [asked, ask];
}

function listen(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function ask(change: Partial<Asked>): void {
  now = { ...now, ...change };
  for (const listener of listeners) listener();
}

/** The list with one entry about something, in the place of what was there; or with none. */
export function instead<T extends object, About extends Partial<T>>(
  list: readonly T[],
  about: About,
  rest: Omit<T, keyof About> | undefined,
): T[] {
  const isSame = (one: T) =>
    Object.entries(about).every(([key, value]) => one[key as keyof T] === value);
  const others = list.filter((one) => !isSame(one));
  return rest === undefined ? others : [...others, { ...about, ...rest } as unknown as T];
}

/** How many things are supposed. */
export function countSupposed({ taxRate, ...lists }: WireSupposed): number {
  const entries = Object.values(lists).reduce((sum, list) => sum + list.length, 0);
  return entries + (taxRate === null ? 0 : 1);
}
