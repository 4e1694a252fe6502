import type { CandidateKind, Name, Printing } from '../../catalogue/index.ts';
import type { Reading } from '../../dating/index.ts';
import type { SourceKind } from '../../evidence/index.ts';
import type { Figure } from '../figures/types.ts';

/**
 * Everything that is told of a card: what its dossier leads to, without what stays at home. It is a
 * plain value in no language; words are made of it by `phrasesOf`. Days are ISO 8601.
 */
export interface Account {
  readonly subject: Subject;
  /** The newest day of what it rests on; null where nothing in the dossier has a day. */
  readonly asOf: string | null;
  /** Most probably earliest release first. */
  readonly printings: readonly ToldPrinting[];
  readonly sources: readonly ToldSource[];
  readonly services: readonly ToldService[];
  /** Known unauthorised kinds, of no printing too. */
  readonly counterfeits: readonly ToldCounterfeit[];
  /** Newest first. */
  readonly corrections: readonly Correction[];
  /** Every computed figure, each under its lasting name. */
  readonly figures: readonly Figure[];
  /** `story/index.md` as written; null without one. */
  readonly story: string | null;
  /** The currency of the prices; null where the collector shows none. */
  readonly currency: string | null;
  /** Claims that stay at home with their sources. */
  readonly withheldClaims: number;
}

/** The card that is followed. */
export interface Subject {
  readonly id: string;
  readonly title: string;
  /** BCP 47 tag of what the collector writes in, or empty. */
  readonly language: string;
  readonly widthMm: number | null;
  readonly heightMm: number | null;
}

/** All that is told of one printing. */
export interface ToldPrinting {
  readonly id: string;
  /** What it is called in English; `namesIn` gives other languages. */
  readonly name: Name;
  /** Its row of `printings.csv`. */
  readonly cells: Printing;
  readonly productTitle: string | null;
  readonly release: Release;
  /** Facts that are no dates and on which sources differ. */
  readonly disputes: readonly Dispute[];
  readonly traits: readonly ToldTrait[];
  /** How it is told from those most like it, the likest first. */
  readonly told: readonly ToldApart[];
  /** One for each service that lists it. */
  readonly counts: readonly Count[];
  readonly extant: ToldExtant | null;
  /** Raw, then grades of which a sale is known; empty where no price is shown. */
  readonly prices: readonly ToldPrice[];
  /** Ids in `Account.counterfeits`. */
  readonly counterfeits: readonly string[];
  readonly pictures: readonly ToldPicture[];
  /** `story/ID.md` as written; null without one. */
  readonly story: string | null;
}

/** When a printing could first be had, how sure that is, and why. */
export interface Release {
  /** Null where nothing bounds the day. */
  readonly best: string | null;
  readonly edtf: string;
  readonly pBest: number;
  /** Shortest run of days that holds 0.95. */
  readonly interval95: readonly [string, string] | null;
  readonly pInterval: number;
  /** As `DatedPrinting.state`: one day, a window, only bounded, or open. */
  readonly state: 'day' | 'window' | 'bounded' | 'open';
  /** The fewest days that hold 99.9 %, in order of time, each with its probability. */
  readonly days: readonly (readonly [string, number])[];
  /** Separate peaks, the likeliest first, where there are two or more. */
  readonly modes: readonly { readonly from: string; readonly to: string; readonly p: number }[];
  /** Place in the order of release, from 1; printings of one release share it. */
  readonly place: number;
  /** That no printing is earlier. */
  readonly pFirst: number;
  /** The printing before it, and that it came in that order or on one day; null for the first. */
  readonly after: {
    readonly id: string;
    readonly p: number;
    readonly pSameDay: number;
    /** A stated fact of the dossier. */
    readonly stated: boolean;
  } | null;
  /** Printings that share the release, by the evidence so far. */
  readonly together: readonly string[];
  /** Why, in English; words that decide stand between asterisks. */
  readonly why: string;
  readonly claims: readonly ToldClaim[];
}

/** A claim as it is shown. */
export interface ToldClaim {
  /** Lasting name, `SOURCE.PROPERTY.WHAT`; it does not change when rows move. */
  readonly key: string;
  readonly source: string;
  readonly property: string;
  /** As written. */
  readonly value: string;
  readonly locator: string | null;
  readonly quote: string | null;
  /** That the value, read with its own precision, holds. */
  readonly pRight: number;
  /** The most probable way in which it came about. */
  readonly reading: Reading;
  /** The same in English. */
  readonly explanation: string;
  readonly slip: boolean;
  /** First and last day that the value can mean; null where open. */
  readonly span: readonly [string | null, string | null];
}

/** A fact that is no date, on which sources differ. */
export interface Dispute {
  readonly property: string;
  /** The likeliest first. */
  readonly values: readonly {
    readonly value: string;
    readonly p: number;
    /** Keys of the claims that state it. */
    readonly claims: readonly string[];
  }[];
  /** In English; words that decide stand between asterisks. */
  readonly why: string;
}

/** A mark that may be published. */
export interface ToldTrait {
  readonly trait: string;
  /** In the dossier's own words; `none`: known to be absent. */
  readonly value: string;
  /** `eye`, `loupe` …; null where it is not told. */
  readonly sees: string | null;
  /** Where, on which face, in card millimetres; null where it is not told. */
  readonly region: Region | null;
}

/** A rectangle on a face of the card, from its top-left corner. */
export interface Region {
  readonly face: 'front' | 'back';
  /** Left, top, right, bottom. */
  readonly boxMm: readonly [number, number, number, number];
}

/** The traits that tell a printing from another. */
export interface ToldApart {
  readonly other: string;
  readonly by: readonly {
    readonly trait: string;
    readonly here: string;
    readonly there: string;
    readonly sees: string | null;
  }[];
}

/** What a service has counted of a printing. */
export interface Count {
  readonly service: string;
  readonly asOf: string;
  /** The service's own words. */
  readonly labels: readonly string[];
  readonly total: number;
  readonly total95: readonly [number, number];
  /** At a top grade. */
  readonly top: number;
  /** Top over total; null where nothing is graded. */
  readonly rate: number | null;
  readonly rate95: readonly [number, number];
  /** Printings that the service counts under the same label. */
  readonly lumpedWith: readonly string[];
}

/** How many certified copies can turn up. */
export interface ToldExtant {
  readonly estimate: number;
  readonly interval95: readonly [number, number];
  readonly method: string;
  /** `lower`: an estimate from below. */
  readonly bound: 'lower' | 'none';
  /** Distinct certificates seen, and of them those seen more than once. */
  readonly seen: number;
  readonly again: number;
  readonly from: string;
  readonly to: string;
}

/** What the next copy sold may fetch; no promise. */
export interface ToldPrice {
  /** Null for raw. */
  readonly service: string | null;
  readonly grade: string | null;
  readonly median: number;
  readonly interval80: readonly [number, number];
  readonly sales: number;
}

/** A picture that its rights and its owner let out. */
export interface ToldPicture {
  /** Name within the dossier. */
  readonly file: string;
  /** The printing or counterfeit that it shows. */
  readonly of: string;
  /** `copy`: one copy at its owner's, which is no reference. */
  readonly shows: CandidateKind | 'case' | 'copy';
  readonly role: string;
  readonly side: string | null;
  /** Who took it; null where it is not told. */
  readonly by: string | null;
  readonly rights: string;
  /** Why a reference is believed to be what it is. */
  readonly knownBy: string | null;
  /** As the dossier has it; empty where it is not told. */
  readonly sha256: string;
}

/** A source with what it has proved to be worth. */
export interface ToldSource {
  readonly id: string;
  readonly title: string;
  readonly kind: SourceKind;
  readonly citation: string | null;
  readonly url: string | null;
  readonly accessed: string | null;
  readonly archived: string | null;
  readonly cites: readonly string[];
  /** Its claims in the dossier. */
  readonly claims: number;
  /** Share of its days of sale that hold the true day; null where it names none. */
  readonly accuracy: number | null;
  readonly accuracy95: readonly [number, number] | null;
  readonly derives: readonly { readonly from: string; readonly p: number }[];
  readonly habits: readonly {
    readonly reading: Reading;
    readonly words: string;
    readonly share: number;
  }[];
}

/** A grading service. */
export interface ToldService {
  readonly id: string;
  readonly title: string;
  /** Lowest grade that is counted as a top grade; empty where none is told. */
  readonly top: string;
}

/** A known kind of unauthorised or altered copy, or of a tampered case; never a verdict on one. */
export interface ToldCounterfeit {
  readonly id: string;
  readonly kind: 'counterfeit' | 'alteration' | 'case';
  /** The printings that it passes for. */
  readonly printings: readonly string[];
  /** EDTF, or empty. */
  readonly knownSince: string;
  readonly note: string;
  readonly traits: readonly ToldTrait[];
  readonly pictures: readonly ToldPicture[];
}

/** What a reader wrote in, and what came of it. */
export interface Correction {
  readonly id: string;
  /** EDTF, or empty. */
  readonly received: string;
  /** The name under which the reader agreed to be thanked; null without consent. */
  readonly credit: string | null;
  readonly says: string;
  readonly about: string;
  readonly answer: string;
  /** As the collector writes it: open, accepted, declined … */
  readonly state: string;
  /** The revision that took it up; empty where there is none yet. */
  readonly revision: string;
}
