import type { Printing } from '../../catalogue/index.ts';
import type { DateProperty, Source } from '../types.ts';

/** One thing that a line of notes says of a printing. */
export interface NoteClaim {
  readonly property: DateProperty;
  /** EDTF; a day that can be read two ways is the set of both. */
  readonly value: string;
  /** In the words of the note; `null` where it names none. */
  readonly source: string | null;
  /** Probability, 0 to 1, that property and value are what the note says. */
  readonly p: number;
  /** The words that were read as the date. */
  readonly words: string;
  /** True where the value is the set of two readings of one day. */
  readonly two_way: boolean;
}

/** Columns of `printings.csv` that a line tells. */
export type PrintingWords = Readonly<Partial<Record<keyof Printing, string>>>;

/** What one line of notes was read as. */
export interface NoteLine {
  /** From 1. */
  readonly line: number;
  readonly printing: PrintingWords | null;
  readonly claims: readonly NoteClaim[];
  /** The words that were not understood. */
  readonly left_over: string;
  readonly kind: 'blank' | 'heading' | 'header' | 'item' | 'row' | 'rule';
  /** What the heading, the table's column or the item above adds to the line. */
  readonly context: {
    readonly printing: PrintingWords | null;
    readonly source: string | null;
    readonly year: number | null;
  };
}

/** Notes read line by line: one entry for each line of the text. */
export interface NotesReading {
  readonly lines: readonly NoteLine[];
}

/** What the dossier already knows, which helps to tell names from other words. */
export interface NotesContext {
  readonly printings?: readonly Printing[];
  readonly sources?: readonly Source[];
  /** BCP 47 tag of the language that the notes are mostly written in. */
  readonly language?: string;
}
