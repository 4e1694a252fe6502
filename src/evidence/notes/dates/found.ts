import type { Part } from './part.ts';

/** A date phrase where it stands: the tokens from `from` up to `to`. */
export interface Found {
  readonly from: number;
  readonly to: number;
  /** More than one where the phrase can be read in several ways. */
  readonly parts: readonly Part[];
  /** How it is written: the separators of a purely numeric date, else a word. */
  readonly style: 'iso' | 'slash' | 'dot' | 'hyphen' | 'worded' | 'signs' | 'bare' | 'short';
  /** Languages whose month or season name it uses. */
  readonly languages: readonly string[];
  /** The separator of the first two numbers settles nothing and neither does their size. */
  readonly twoWay: boolean;
  /** 0 to 1: how sure it is that this is a date at all, and this one. */
  readonly trust: number;
}

/** The phrase of a single reading. */
export function found(
  from: number,
  to: number,
  part: Part,
  style: Found['style'],
  extra: Partial<Pick<Found, 'languages' | 'trust'>> = {},
): Found {
  return { from, to, parts: [part], style, languages: [], twoWay: false, trust: 1, ...extra };
}
