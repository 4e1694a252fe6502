import type { Interval } from '../maths/index.ts';

/** A grading service, as the dossier knows it. */
export interface Service {
  readonly id: string;
  readonly title?: string;
  /** Worst to best. */
  readonly grades: readonly string[];
  /** Index of the lowest grade that counts as a top grade. */
  readonly top: number;
  /** Entries that are no grade: authentic only, altered … */
  readonly offScale: readonly string[];
  /** Grades and top grade were read off the report, since the dossier does not state them. */
  readonly assumed?: boolean;
}

/** One population report, as it was read on one day. */
export interface Report {
  readonly service: string;
  /** As written. */
  readonly asOf: string;
  /** The last day that it can mean. */
  readonly day: number;
  /** The service's own words. */
  readonly labels: readonly string[];
  /**
   * By label: the printings that a collector confirmed, no others being under it; empty where nothing
   * was said, null where it is none of the dossier's.
   */
  readonly confirmed: readonly (readonly string[] | null)[];
  /** A row a label, a column a grade and then an entry off the scale. */
  readonly counts: Int32Array;
  readonly columns: number;
}

/** A block of certificate numbers and the period in which it is known to have been used. */
export interface Block {
  readonly service: string;
  readonly from: string;
  readonly to: string;
  readonly period: string;
  readonly firstDay: number;
  readonly lastDay: number;
}

/** A certain graded copy that was seen or sold. */
export interface Seen {
  readonly day: number;
  /** Several where it is not known which of them; empty where not at all. */
  readonly printings: readonly string[];
  readonly service: string;
  /** Empty where it was not read. */
  readonly certificate: string;
  /** Empty where it was not read. */
  readonly label: string;
  readonly grade: string;
  /** The copy's own number, where the printing has one; empty where it was not read. */
  readonly serial: string;
  readonly where: string;
  readonly sold: boolean;
}

/** How many copies of a printing were on offer. */
export interface Offer {
  readonly day: number;
  readonly venue: string;
  readonly printing: string;
  readonly raw: number;
  readonly graded: number;
}

/** Everything that populations are computed from. */
export interface Records {
  readonly services: readonly Service[];
  /** By service and day, ascending. */
  readonly reports: readonly Report[];
  readonly blocks: readonly Block[];
  readonly seen: readonly Seen[];
  readonly offers: readonly Offer[];
  /** What raw copies of a printing were sold for up to the newest day, their middle, in one currency. */
  readonly prices: ReadonlyMap<string, number>;
  /** The newest day in sales, sightings, population and rates, `-Infinity` where there is none. */
  readonly newestDay: number;
}

/** What one service has counted of one printing. */
export interface ServiceCount {
  readonly service: string;
  readonly as_of: string;
  readonly labels: readonly string[];
  /** Graded copies; under a lump this printing's estimated share. */
  readonly total: number;
  readonly total95: Interval;
  /** At a top grade; under a lump an estimate. */
  readonly top: number;
  /** Top over total; null where nothing is graded. */
  readonly rate: number | null;
  /** Jeffreys' interval of the rate; `wilson95` is Wilson's. */
  readonly interval95: Interval;
  readonly wilson95: Interval;
  readonly shrunk: number;
  readonly shrunk95: Interval;
  /** Entries that are no grade, by their name. */
  readonly off_scale: Readonly<Record<string, number>>;
  /** The printings that are counted under the same label. */
  readonly lumped_with: readonly string[];
  /** The probability that the service lists the printing at all. */
  readonly p_listed: number;
}

/** How many certified copies can turn up. */
export interface Extant {
  readonly estimate: number;
  readonly interval95: Interval;
  readonly method: string;
  /** What exactly is counted. */
  readonly of: string;
  /** `lower`: the estimate is one from below. */
  readonly bound: 'lower' | 'none';
  /** Distinct certificates seen, and of them those seen more than once. */
  readonly seen: number;
  readonly again: number;
  /** First and last day of the sightings. */
  readonly from: string;
  readonly to: string;
  /** That copies turn up about alike. */
  readonly p_even: number;
  /** The chance that the next look is at a copy seen before. */
  readonly covered: number;
  /** The same by other methods. */
  readonly others: readonly {
    readonly method: string;
    readonly estimate: number;
    readonly interval95: Interval | null;
  }[];
  /** The conditions under which it misleads that are met here. */
  readonly cautions: readonly string[];
}

/** Copies of one printing at one grade of a service, or of an entry that is no grade; under a lump an estimate. */
export interface GradeCount {
  readonly service: string;
  readonly printing: string;
  readonly grade: string;
  readonly count: number;
}

/** That copies of a printing are counted under a label. */
export interface LabelMatch {
  readonly service: string;
  readonly label: string;
  /** Null: a printing that the dossier does not have. */
  readonly printing: string | null;
  readonly p: number;
  /** What the label says of the printing, by field: the same, nearly the same, another thing. */
  readonly agrees: readonly string[];
  readonly near: readonly string[];
  readonly differs: readonly string[];
}

/** A label of a service's newest report, with what it may stand for. */
export interface Labelled {
  readonly service: string;
  readonly as_of: string;
  readonly label: string;
  /** Graded copies under it. */
  readonly total: number;
  /** As `Report.confirmed` has it. */
  readonly confirmed: readonly string[] | null;
  /** The likeliest first. */
  readonly matches: readonly LabelMatch[];
  /** Nothing was said of it, and one printing alone is not sure enough. */
  readonly in_doubt: boolean;
}

/** The counts of one printing at one service, report by report. */
export interface History {
  readonly service: string;
  /** The printing's share of the copies under its labels: 1 unless a label holds several printings. */
  readonly share: number;
  readonly share95: Interval;
  readonly snapshots: readonly {
    readonly as_of: string;
    readonly day: number;
    /** All copies under its labels: by grade, then by entry that is no grade. */
    readonly counts: readonly number[];
  }[];
}

/** What is known of how many there are of one printing. */
export interface PrintingCount {
  readonly id: string;
  readonly services: readonly ServiceCount[];
  readonly extant: Extant | null;
  /** Graded copies of all services together, as an upper bound: copies sent in again count again. */
  readonly graded_at_most: number;
  /** The last day of the oldest dated block in which a certificate of it was seen. */
  readonly seen_by: {
    readonly day: string;
    readonly service: string;
    readonly certificate: string;
  } | null;
  /** Why its population is low; null where it is not. */
  readonly low: Low | null;
  /** Certificates of it that were seen, by service. */
  readonly certificates: Readonly<Record<string, readonly string[]>>;
  /** Copies of it that were looked at, by service and label with a line break between them. */
  readonly looked: Readonly<Record<string, number>>;
}

/** Why few copies of a printing are graded, against the printings of the dossier. */
export interface Low {
  /** That few exist is the greater part of it, rather than that few were sent in. */
  readonly p_few_exist: number;
  /** Copies on offer that it rests on. */
  readonly raw: number;
  readonly graded: number;
  /** What would settle it, where it is not settled. */
  readonly settle: string | null;
}

/** What a label's count did between two reports. */
export interface Growth {
  readonly service: string;
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly before: number;
  readonly after: number;
  readonly per_year: number | null;
}

/** A count that fell, which grading alone cannot do. */
export interface Fall {
  readonly service: string;
  readonly label: string;
  /** Null: the label's whole count. */
  readonly grade: string | null;
  readonly from: string;
  readonly to: string;
  readonly before: number;
  readonly after: number;
  readonly explanation: string;
}

/** The answer for a dossier on a day. */
export interface Population {
  readonly on: string | null;
  readonly printings: readonly PrintingCount[];
  readonly matches: readonly LabelMatch[];
  readonly growth: readonly Growth[];
  readonly falls: readonly Fall[];
  /** Services whose grades were read off their report. */
  readonly assumed: readonly string[];
}
