import type { Slot } from './design.ts';
import type { Reading } from './numbers.ts';

/** What a source says in one slot: a day, and with it the month or year that holds it. */
export interface Said {
  readonly slot: Slot;
  readonly day: number;
  readonly how: Reading | 'copied' | 'property';
}
