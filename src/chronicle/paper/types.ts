/** A document to be set on pages: what it says and in which order, without how it looks. */
export interface Paper {
  readonly title: string;
  /** Beneath the title; empty where there is none. */
  readonly subtitle: string;
  /** Further lines of the title page. */
  readonly front?: readonly string[];
  /** BCP 47 tag of its words. */
  readonly language: string;
  readonly size: PaperSize;
  /** Heading of the contents, which follow a title page; null for a paper of few pages. */
  readonly contents: string | null;
  /** The day that it holds for, ISO 8601, stated as that of the file; null where none is known. */
  readonly asOf: string | null;
  /** At the foot of every page, beside the page's number. */
  readonly foot: string;
  /** How large the words are, 1 as usual; one-page papers that are full take less. */
  readonly scale?: number;
  readonly blocks: readonly Block[];
}

/** ISO 216 A4, or the Letter of North America. */
export type PaperSize = 'a4' | 'letter';

/** Words, some of them set apart. */
export type Words = readonly Run[];

/** Words in one style; `to`: an address of the web, or `#` and the key of a heading. */
export interface Run {
  readonly text: string;
  /** `aside`: at the far end of its line, dots leading there. */
  readonly style?: 'strong' | 'emphasis' | 'code' | 'marked' | 'slip' | 'evidence' | 'aside';
  readonly to?: string;
  /** By which other words can link here; unique. */
  readonly key?: string;
}

/** One part of a paper. */
export type Block =
  | {
      readonly is: 'heading';
      readonly level: 1 | 2 | 3;
      readonly text: string;
      /** By which words can link to it; unique. */
      readonly key?: string;
      /** It begins a page. */
      readonly breaks?: boolean;
    }
  | {
      readonly is: 'words';
      readonly words: Words;
      /** `head` and `lead` stay with what follows; `detail` stands beneath a heading. */
      readonly as?: 'lead' | 'detail' | 'small' | 'quote' | 'caution' | 'story' | 'head';
      /** BCP 47 tag, where it is not that of the paper. */
      readonly language?: string;
    }
  | {
      readonly is: 'list';
      readonly items: readonly Words[];
      /** Each with a box to tick. */
      readonly boxes?: boolean;
      /** As of `words`. */
      readonly language?: string;
    }
  | {
      readonly is: 'table';
      readonly columns: readonly Column[];
      /** A row of one cell stands above those that follow. */
      readonly rows: readonly (readonly Words[])[];
    }
  | {
      readonly is: 'lanes';
      /** Heads of names, of days and of their probabilities. */
      readonly heads: readonly [string, string, string];
      /** Names of the equal parts that the lanes are cut into. */
      readonly parts: readonly string[];
      readonly lanes: readonly PaperLane[];
    }
  | {
      /** Blocks side by side; a page is filled column by column. */
      readonly is: 'columns';
      readonly count: number;
      readonly blocks: readonly Block[];
    }
  | {
      readonly is: 'drawing';
      /** SVG with its size. */
      readonly svg: string;
      /** In millimetres; else as wide as the page allows. */
      readonly width?: number;
      readonly alternative: string;
      readonly caption: Words;
    }
  | {
      readonly is: 'pictures';
      readonly across: number;
      /** Height of each in millimetres; else as high as its width asks for. */
      readonly height?: number;
      readonly pictures: readonly Picture[];
    }
  | { readonly is: 'break' };

/** A line of a figure in which all lines share one axis. */
export interface PaperLane {
  readonly name: Words;
  /** SVG, as wide as the axis; the words on either side tell the same. */
  readonly svg: string;
  readonly when: Words;
  readonly doubt: Words;
}

/** A column of a table. */
export interface Column {
  readonly head: string;
  /** Share of the width; null takes what its words need. */
  readonly share: number | null;
  readonly align?: 'left' | 'right';
}

/** A picture on a page. */
export interface Picture {
  /** Name under which its bytes are handed over: a safe one, which ends in `.jpg` or `.png`. */
  readonly file: string;
  readonly alternative: string;
  readonly caption: Words;
}
