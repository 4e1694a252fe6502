import type { Rates } from './rates.ts';
import type { State } from './state.ts';

/** Everything learned that one kept sweep holds, so that releases can be dated anew under it. */
export interface Snapshot
  extends Pick<
    State,
    | 'lagOf'
    | 'parentOf'
    | 'runCopied'
    | 'copyRate'
    | 'histMass'
    | 'histDensity'
    | 'day'
    | 'together'
    | 'habitCounts'
    | 'marketCounts'
    | 'allCounts'
  > {
  /** Whether sources are held to take from those only that they cite. */
  readonly guarded: boolean;
  readonly rates: Pick<Rates, 'shares' | 'value' | 'level' | 'reading' | 'cellStart' | 'cells'>;
}

/** Copies what a chain holds now. */
export function snapshotOf(state: State, guarded: boolean): Snapshot {
  const { shares, value, level, reading, cellStart, cells } = state.rates;
  return {
    guarded,
    rates: { shares: shares.slice(), value: value.slice(), level, reading, cellStart, cells },
    lagOf: state.lagOf.slice(),
    parentOf: state.parentOf.slice(),
    runCopied: state.runCopied.slice(),
    copyRate: state.copyRate.slice(),
    histMass: state.histMass.slice(),
    histDensity: state.histDensity.slice(),
    day: state.day.slice(),
    together: state.together,
    habitCounts: state.habitCounts.slice(),
    marketCounts: state.marketCounts.slice(),
    allCounts: state.allCounts.slice(),
  };
}
