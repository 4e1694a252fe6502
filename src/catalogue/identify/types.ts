import type { TraitValue } from '../traits/value.ts';
import type { Look } from './looks.ts';

/** What a copy may be: a printing, a known kind of unauthorised or changed copy, or none of them. */
export type CandidateKind = 'printing' | 'counterfeit' | 'alteration';

/** A mark by which printings or counterfeits are told apart, on one bearer. */
export interface TraitRow {
  /** Ids of printings or counterfeits that all show it. */
  readonly of: readonly string[];
  readonly trait: string;
  readonly value: TraitValue;
  readonly sees: Look | null;
  /** Where, as written: `x0 y0 x1 y1` in mm, `back` before it for the back; empty: not told. */
  readonly region: string;
  /** False: it stays at home, since what is published teaches the forger too. */
  readonly publish: boolean;
}

/** A known kind of counterfeit or alteration. */
export interface CounterfeitKind {
  readonly id: string;
  /** The printings that it passes for; one of them, where there are several. */
  readonly printings: readonly string[];
  readonly kind: 'counterfeit' | 'alteration';
}

/** What was seen of one trait on a copy, or said of it. */
export interface Reading {
  readonly trait: string;
  readonly value: TraitValue;
  /** Null: as the trait is looked at. */
  readonly sees: Look | null;
  /** One standard error of a measured number, in the measure's own unit; null: by the look. */
  readonly sd: number | null;
}

/** One thing that a copy may be; a kind that passes for several printings stands once for each. */
export interface Hypothesis {
  readonly id: string;
  readonly kind: CandidateKind | 'unlisted';
  /** The printing itself, or the one that it passes for; empty for the unlisted rest. */
  readonly printing: string;
}

/** A trait over all hypotheses. */
export interface Trait {
  readonly name: string;
  readonly look: Look;
  readonly region: string;
  /** By hypothesis; undefined: not known. */
  readonly values: readonly (TraitValue | undefined)[];
  /** What its numbers measure; null where none of its values is a number. */
  readonly measure: string | null;
  /** False for what no look at a card tells, such as the product it lay in. */
  readonly seen: boolean;
  /** False where one of its rows stays at home. */
  readonly publish: boolean;
}
