import type { Content, Printing, Product } from '../catalogue/index.ts';
import type { EdtfDate } from './edtf.ts';

export const SOURCE_KINDS = [
  'publisher-database',
  'packaging',
  'magazine',
  'book',
  'press-release',
  'advertisement',
  'newspaper',
  'store-listing',
  'grading-label',
  'checklist',
  'forum',
  'video',
  'archive-snapshot',
  'correspondence',
  'registration-record',
  'own-observation',
  'auction-record',
  'other',
] as const;
export type SourceKind = (typeof SOURCE_KINDS)[number];

export const DATE_PROPERTIES = [
  'on-sale',
  'announced',
  'cover-date',
  'label-year',
  'copyright-year',
  'printed-on',
  'seen-by',
  'not-before',
  'unlisted-on',
  'distributed-until',
] as const;
export type DateProperty = (typeof DATE_PROPERTIES)[number];

/** Whoever states something. */
export interface Source {
  readonly id: string;
  readonly title?: string;
  /** `other` where the kind is not known. */
  readonly kind: SourceKind;
  readonly citation?: string;
  readonly url?: string;
  readonly accessed?: string;
  readonly archived?: string;
  /** Ids of the sources that it says it took things from. */
  readonly cites: readonly string[];
  readonly service?: string;
  readonly publish?: string;
}

/** One thing that one source states of a printing or of a product. */
export interface Claim {
  /** Row of `claims.csv`, the header being row 1. */
  readonly row: number;
  /** The printing; several where it is not known which of them; none where a product is meant. */
  readonly printings: readonly string[];
  readonly product?: string;
  readonly source: string;
  /** One of `DATE_PROPERTIES`, `print-run`, `exists` or a column of `printings.csv`. */
  readonly property: string;
  /** As written. */
  readonly value: string;
  /** The value as a date, for the properties of `DATE_PROPERTIES`. */
  readonly date?: EdtfDate;
  readonly locator?: string;
  readonly quote?: string;
  readonly stated_on?: EdtfDate;
  readonly read_on?: EdtfDate;
  readonly note?: string;
}

/** A sequence that is certain for a stated reason: never the same day. */
export interface OrderFact {
  readonly row: number;
  readonly earlier: string;
  readonly later: string;
  readonly reason?: string;
}

/** The weekdays as ISO 8601 orders them, by their English names in small letters. */
export const WEEKDAYS: readonly string[] = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
];

/** Weekdays on which releases of a market and channel came out as a rule, in some period. */
export interface WeekdayFact {
  readonly row: number;
  /** Missing where it is said of every market. */
  readonly market?: string;
  /** Missing where it is said of every channel. */
  readonly channel?: string;
  /** 1 (Monday) to 7 (Sunday), ascending. */
  readonly weekdays: readonly number[];
  /** First and last day of the period; infinite where it is open. */
  readonly first: number;
  readonly last: number;
}

/** Everything that dating and the weighing of facts look at. Ids are unique and references resolve. */
export interface Evidence {
  readonly printings: readonly Printing[];
  readonly products: readonly Product[];
  readonly contents: readonly Content[];
  readonly sources: readonly Source[];
  readonly claims: readonly Claim[];
  readonly orders: readonly OrderFact[];
  /** Missing where none is stated. */
  readonly weekdays?: readonly WeekdayFact[];
}
