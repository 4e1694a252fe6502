import type { SourceKind } from '../../../evidence/index.ts';
import type { ClaimChange } from '../../revisions/types.ts';

/** The interface words of the site in one language. */
export interface SiteWords {
  /** Name of the language in itself. */
  readonly itself: string;
  readonly languages: string;
  readonly skip: string;
  readonly overview: string;
  readonly tell: string;
  readonly sources: string;
  readonly corrections: string;
  readonly chronology: string;
  readonly chronologyNote: string;
  /** Said beneath a chronology whose lanes stand on pages of their own. */
  readonly partsNote: string;
  readonly parts: string;
  /** A part of several, with the first and last year of its days, where it has some. */
  readonly part: (n: number, of: number, from?: number, to?: number) => string;
  readonly printings: (n: number) => string;
  readonly evidence: string;
  readonly days: string;
  readonly graded: string;
  readonly gradedNote: string;
  readonly prices: string;
  readonly pricesNote: string;
  readonly traits: string;
  readonly toldFrom: (name: string) => string;
  readonly toldAlike: (name: string) => string;
  readonly unauthorised: string;
  readonly unauthorisedNote: string;
  readonly touchNote: string;
  readonly knownSince: (when: string) => string;
  readonly pictures: string;
  readonly story: string;
  readonly facts: string;
  readonly disputes: string;
  readonly bibliography: string;
  readonly reliability: string;
  readonly reliabilityNote: string;
  readonly none: string;
  readonly withheld: (n: number) => string;
  readonly address: string;
  readonly asOf: (day: string) => string;
  readonly earlier: string;
  readonly later: string;
  readonly heads: {
    readonly source: string;
    readonly says: string;
    readonly where: string;
    readonly right: string;
    readonly how: string;
    readonly service: string;
    readonly copies: string;
    readonly top: string;
    readonly day: string;
    readonly trait: string;
    readonly value: string;
    readonly look: string;
    readonly here: string;
    readonly there: string;
    readonly grade: string;
    readonly price: string;
    readonly eightOfTen: string;
    readonly sales: string;
    readonly kind: string;
    readonly claims: string;
    readonly takenFrom: string;
    readonly answer: string;
    readonly probability: string;
  };
  readonly raw: string;
  readonly slip: string;
  readonly accessed: (when: string) => string;
  readonly archived: string;
  readonly credit: (by: string | null, rights: string) => string;
  readonly alt: (side: string, name: string, shows: string) => string;
  readonly sides: Readonly<Record<string, string>>;
  readonly shows: Readonly<Record<string, string>>;
  readonly looks: Readonly<Record<string, string>>;
  readonly kinds: Readonly<Record<'counterfeit' | 'alteration' | 'case', string>>;
  readonly states: Readonly<Record<string, string>>;
  readonly sourceKinds: Readonly<Record<SourceKind, string>>;
  readonly absent: string;
  readonly history: HistoryWords;
  readonly data: DataWords;
}

/** Words about revisions and what changed. */
export interface HistoryWords {
  readonly title: string;
  readonly note: string;
  /** On every page: the revision that it is of. */
  readonly revision: (n: number, day: string) => string;
  readonly proof: (day: string) => string;
  readonly madeWith: (program: string) => string;
  readonly first: string;
  readonly nothing: string;
  /** What became of claims, as a heading. */
  readonly claims: Readonly<Record<ClaimChange['what'], string>>;
  readonly figures: string;
  readonly heads: {
    readonly figure: string;
    readonly was: string;
    readonly is: string;
    readonly why: string;
  };
  /** What a figure is, by the first part of its name. */
  readonly kinds: Readonly<Record<FigureKind, string>>;
  readonly notTold: string;
  readonly because: {
    readonly added: (sources: number) => string;
    readonly withdrawn: (sources: number) => string;
    readonly misread: (claims: number) => string;
    readonly data: string;
    readonly judged: string;
    readonly method: string;
  };
  /** Figures that moved and are not listed. */
  readonly more: (n: number) => string;
  readonly withheld: (n: number) => string;
  /** Corrections by readers that a revision answers. */
  readonly takenUp: string;
}

/** The first part of a figure's name. */
export type FigureKind =
  | 'release'
  | 'place'
  | 'population'
  | 'top'
  | 'extant'
  | 'price'
  | 'accuracy'
  | 'first'
  | 'printings'
  | 'sources'
  | 'claims';

/** What a download holds; `table`: one table of the research. */
export type DownloadKind =
  | 'account'
  | 'key'
  | 'checklist'
  | 'research'
  | 'json'
  | 'csl'
  | 'annotations'
  | 'feed'
  | 'table';

/** Words about what can be downloaded. */
export interface DataWords {
  readonly title: string;
  readonly note: string;
  readonly tables: string;
  readonly kinds: Readonly<Record<Exclude<DownloadKind, 'table'>, string>>;
}
