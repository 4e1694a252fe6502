/**
 * A computed figure under a lasting name. Story links, scripts, revisions and pages take figures
 * from here and nowhere else. The names are described in `docs/guide/publish.md`.
 */
export interface Figure {
  /** `release.PRINTING`, `population.PRINTING.SERVICE` … */
  readonly name: string;
  readonly value: FigureValue;
  readonly unit: FigureUnit | null;
  /** The day that it holds for, ISO 8601; null where nothing in the dossier has a day. */
  readonly asOf: string | null;
  /** Keys of the claims that it rests on; empty where it rests on counts or sales. */
  readonly claims: readonly string[];
  /** The printing that it is about; null where it is about all of them. */
  readonly printing: string | null;
}

/** What is counted. */
export type FigureUnit = 'printings' | 'sources' | 'claims' | 'copies';

/** What a figure can be; intervals hold 0.95 unless said otherwise. */
export type FigureValue =
  | ReleaseValue
  | {
      readonly is: 'count';
      readonly count: number;
      readonly interval: readonly [number, number] | null;
      /** Counted, estimated, or a bound from above or below. */
      readonly how: 'counted' | 'estimated' | 'at-most' | 'at-least';
    }
  | {
      readonly is: 'share';
      readonly share: number;
      readonly interval: readonly [number, number] | null;
    }
  | {
      readonly is: 'price';
      /** Median of the next sale. */
      readonly amount: number;
      /** Holds the next sale with probability 0.8. */
      readonly interval80: readonly [number, number];
      readonly currency: string;
    }
  | {
      /** Place in the order of release, from 1. */
      readonly is: 'place';
      readonly place: number;
      readonly of: number;
      /** That it came after the one before it, or on the same day; 1 for the first place. */
      readonly p: number;
    }
  | {
      /** The printing that is most probably the earliest. */
      readonly is: 'printing';
      readonly id: string;
      readonly p: number;
    };

/** A day of release with its doubt. */
export interface ReleaseValue {
  readonly is: 'release';
  readonly best: string | null;
  readonly edtf: string;
  readonly p: number;
  readonly interval: readonly [string, string] | null;
  readonly pInterval: number;
  readonly state: 'day' | 'window' | 'bounded' | 'open';
}
