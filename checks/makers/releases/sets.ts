import type { Days } from './parse.ts';

/** Releases of one piece of software: the maker's own days, and what others state. */
export interface ReleaseSet {
  readonly name: string;
  readonly truth: Days;
  /** The line of releases that a version belongs to, as its number tells; empty for one line. */
  readonly market: (version: string) => string;
  readonly keep: (version: string) => boolean;
  readonly sources: Readonly<Record<string, Days>>;
}
