import type { Calendar } from './kernels.ts';

/** Most lags that are considered for one source. */
export const MAX_LAGS = 6;
/** Entry code for coarse statements: any reading that leaves the day where it is, or near. */
export const LOCAL = 254;

/**
 * The dossier laid out for the sampler. A *view* is a statement as one event sees it: a statement that
 * may concern several events has a view at each. Arrays run over events (E), cells (C), views (V),
 * sources (S); `…Start` arrays have one more entry than what they divide.
 */
export interface Problem {
  readonly first: number;
  readonly last: number;
  readonly calendar: Calendar;
  readonly nEvents: number;
  readonly nSources: number;
  readonly nViews: number;
  readonly cellStart: Int32Array;
  readonly cellLo: Int32Array;
  readonly cellHi: Int32Array;
  /** Weekday, 0 for Monday, of a cell that is one day; −1 for a block. */
  readonly cellWeekday: Int8Array;
  /** Days of the cell by weekday: seven counts a cell. */
  readonly cellWeekdays: Uint16Array;
  /** Seven times the place of a cell's kind of week among those of its event (`stated-weeks.ts`). */
  readonly cellWeek: Uint16Array;
  readonly weekStart: Int32Array;
  readonly weekStated: Float64Array;
  readonly habitOf: Int32Array;
  readonly marketOf: Int32Array;
  readonly nHabits: number;
  readonly nMarkets: number;
  /** Views are sorted by event. */
  readonly viewStart: Int32Array;
  readonly viewEvent: Int32Array;
  readonly viewStatement: Int32Array;
  readonly viewSource: Int32Array;
  /** Cell of the rate table (source × market × era); −1 for properties without readings. */
  readonly viewRate: Int32Array;
  readonly viewHist: Int32Array;
  /** Multiplies density into mass for values that span several days. */
  readonly viewScale: Float32Array;
  /** Extra weight of noise for values marked uncertain. */
  readonly viewDoubt: Float32Array;
  /** First and last day of the value taken for the statement; equal where it is one day. */
  readonly viewLo: Int32Array;
  readonly viewHi: Int32Array;
  /** Other views of the same statement: next one in a ring, or the view itself. */
  readonly viewRing: Int32Array;
  readonly viewShare: Float32Array;
  /** Share of the source's other statements that say the same day of other releases. */
  readonly viewFilled: Float32Array;
  /** Probability of the value if its source took the cover's date for the sale. */
  readonly viewCover: Float32Array;
  /** Offset of a view's row in the matrices of bins and likelihoods; its length is the event's cells. */
  readonly rowStart: Int32Array;
  readonly bins: Uint8Array;
  readonly entryStart: Int32Array;
  readonly entryCell: Uint16Array;
  readonly entryReading: Uint8Array;
  readonly entryCoef: Float32Array;
  /** Candidate lags of each source, MAX_LAGS apart, and how many there are. */
  readonly lags: Int32Array;
  readonly nLags: Int32Array;
  /** For each view and candidate lag: entries of cells that the lag explains. */
  readonly lagStart: Int32Array;
  readonly lagCell: Uint16Array;
  /** OTHER_MOMENT, or NEAR_MOMENT a day beside it. */
  readonly lagReading: Uint8Array;
  readonly lagCoef: Float32Array;
  /** Events that a view's value may have been taken from: siblings, then neighbouring rows. */
  readonly linkStart: Int32Array;
  readonly linkEvent: Int32Array;
  /** SIBLING or ROW_SHIFT, and the share of that reading that falls on this event. */
  readonly linkReading: Uint8Array;
  readonly linkShare: Float32Array;
  /** Links seen from the event they point at. */
  readonly backStart: Int32Array;
  readonly backLink: Int32Array;
  readonly backView: Int32Array;
  /** The cell, of all cells, that the view's day is of the event pointed at. */
  readonly backCell: Int32Array;
  /** Pairs of neighbouring events: of one product, or next to each other in some source's list. */
  readonly nNeighbours: number;
  /** Days that are named for an event and for a neighbour alike, with the day's cell, of all cells. */
  readonly sharedStart: Int32Array;
  readonly sharedEvent: Int32Array;
  readonly sharedDay: Int32Array;
  readonly sharedCell: Int32Array;
  readonly nRates: number;
  readonly rateSource: Int32Array;
  readonly rateMarket: Int32Array;
  readonly rateEra: Int32Array;
  readonly nHists: number;
  /** Runs of one source over one product and property, in which derivation is judged as a whole. */
  readonly nRuns: number;
  readonly runSource: Int32Array;
  readonly runGroup: Int32Array;
  readonly runStart: Int32Array;
  readonly runViews: Int32Array;
  readonly viewRun: Int32Array;
  /** Sequence facts: events that come before and after each event. */
  readonly beforeStart: Int32Array;
  readonly before: Int32Array;
  /** Days that must lie between at least: 1, or 0 where they may share a day. */
  readonly beforeGap: Uint8Array;
  readonly afterStart: Int32Array;
  readonly after: Int32Array;
  readonly afterGap: Uint8Array;
}
