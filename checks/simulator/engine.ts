import type { Evidence } from '../../src/evidence/index.ts';
import type { Truth } from './types.ts';

/** What the scorer looks at; the engine's own answer has this shape, and the baselines too. */
export interface Answer {
  readonly printings: readonly {
    readonly id: string;
    readonly best: string | null;
    readonly p_best: number;
    readonly interval95: readonly [string, string] | null;
    readonly p_interval: number;
    readonly days: readonly (readonly [string, number])[];
    readonly claims?: readonly {
      readonly row: number;
      readonly property: string;
      readonly p_right: number;
    }[];
  }[];
  readonly sources?: readonly {
    readonly id: string;
    readonly accuracy: number | null;
    readonly accuracy95: readonly [number, number] | null;
    readonly derives: readonly { readonly from: string; readonly p: number }[];
  }[];
}

/** A way to date a dossier; only the informed limit may look at the truth. */
export type Engine = (evidence: Evidence, truth: Truth, seed: number) => Answer;
