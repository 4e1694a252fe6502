import type { Figure } from '../figures/types.ts';

/** A claim as it stood when a revision was frozen. */
export interface FrozenClaim {
  /** Lasting name, `SOURCE.PROPERTY.WHAT`. */
  readonly key: string;
  readonly source: string;
  readonly property: string;
  /** Printings with `|` between them, or the product. */
  readonly about: string;
  /** As written. */
  readonly value: string;
  /** As written; empty where none is told. */
  readonly locator: string;
  /** That the value holds; null where it was not weighed. */
  readonly pRight: number | null;
  /** Its source stays at home, so that nothing of it is told to readers. */
  readonly home: boolean;
}

/** One published state of the account, as `revisions/NUMBER.json` keeps it. */
export interface Revision {
  readonly format: 1;
  /** From 1. */
  readonly number: number;
  /** ISO 8601. */
  readonly day: string;
  /** SHA-512 of the list of `files`, in hexadecimal. */
  readonly sha512: string;
  /** SHA-512 of each research file in its canonical form. */
  readonly files: Readonly<Record<string, string>>;
  /** Program and version. */
  readonly madeWith: string;
  readonly figures: readonly Figure[];
  readonly claims: readonly FrozenClaim[];
}

/** A revision, or the dossier as it stands, that is not frozen and has no number. */
export type State = Omit<Revision, 'number'> & { readonly number: number | null };

/** What became of a claim between two revisions. */
export interface ClaimChange {
  /**
   * `new`: evidence that was not there; `withdrawn`: no longer there; `misread`: the same source and
   * place with another value; `place`: the same value at another place; `slip`, `no-slip`: the
   * evidence has come to speak against what it says, or for it.
   */
  readonly what: 'new' | 'withdrawn' | 'misread' | 'place' | 'slip' | 'no-slip';
  readonly before: FrozenClaim | null;
  readonly after: FrozenClaim | null;
}

/** What changed together with a figure; that it alone moved the figure is not shown. */
export type Cause =
  /** Sources that were added or withdrawn, and claims read anew, among those it rests on. */
  | {
      readonly is: 'claims';
      readonly added: number;
      readonly withdrawn: number;
      readonly misread: number;
    }
  /** Research files, where it rests on no claims or no claim changed. */
  | { readonly is: 'files'; readonly files: readonly string[] }
  /** Other claims, by which its sources are judged. */
  | { readonly is: 'judged' }
  /** The dossier is the same. */
  | { readonly is: 'method' };

/** A figure that changed, and why. */
export interface FigureChange {
  readonly name: string;
  readonly before: Figure | null;
  readonly after: Figure | null;
  /** Changes of claims that it rests on. */
  readonly claims: readonly ClaimChange[];
  readonly cause: Cause;
  /** The same in English. */
  readonly because: string;
  /** In English: how far it moved. */
  readonly moved: string;
}

/** What changed from one revision to another. */
export interface Difference {
  /** Null for the dossier as it stands, which is not frozen yet. */
  readonly from: number | null;
  readonly to: number | null;
  /** Research files whose contents changed. */
  readonly files: readonly string[];
  readonly claims: readonly ClaimChange[];
  readonly figures: readonly FigureChange[];
}

/** A revision as readers are told of it. */
export interface ToldRevision {
  /** Null for a proof: the dossier as it stands. */
  readonly number: number | null;
  /** ISO 8601. */
  readonly day: string;
  readonly sha512: string;
  readonly madeWith: string;
  /** What changed since the one before; null for the first. */
  readonly change: ToldChange | null;
}

/** What readers are told of a change. */
export interface ToldChange {
  readonly files: readonly string[];
  readonly claims: readonly ClaimChange[];
  readonly figures: readonly FigureChange[];
  /** Changes of claims whose sources stay at home or are told no more. */
  readonly withheld: number;
}
