import { chance } from '../../maths/index.ts';
import { cellHolding } from '../cells.ts';
import type { Compiled } from '../compile.ts';
import { matchOf, viewOf } from '../derivation.ts';
import { BINS, COVER_HIST, FIXED_HISTS } from '../histograms.ts';
import { N_READINGS } from '../readings.ts';
import type { Snapshot } from '../snapshot.ts';
import { createState, type State } from '../state.ts';
import type { AverageWeek, WeekdayCounts } from '../weekdays.ts';
import type { Kept } from './kept.ts';
import { type Names, namesOf } from './names.ts';
import type { Part } from './part.ts';
import { unseenShares } from './unseen.ts';

/** A state for a part, and what fills it from a snapshot of the whole. */
export interface Loader {
  readonly state: State;
  readonly load: (snapshot: Snapshot) => void;
}

/** Makes a state for a part that can be filled from each snapshot in turn. */
export function loaderFor(kept: Kept, part: Part): Loader {
  const { problem } = part.compiled;
  const kinds = kept.fit.evidence.sources.map(({ kind }) => kind);
  const state = createState(problem, kinds, chance(kept.dating.seed));
  const names = namesOf(part.compiled, part.evidence);
  const load = (snapshot: Snapshot) => {
    state.lagOf.set(snapshot.lagOf);
    state.parentOf.set(snapshot.parentOf);
    state.copyRate.set(snapshot.copyRate);
    loadShares(kept, part.compiled, state, names, snapshot);
    loadHists(kept, state, names, snapshot);
    loadWeekdays(kept, part, state, snapshot);
    loadDays(part, state, snapshot);
    loadCopies(kept, part, state, names, snapshot);
    state.together = snapshot.together;
  };
  return { state, load };
}

function loadShares(
  kept: Kept,
  { problem }: Compiled,
  { rates, kinds }: State,
  { markets, rates: names }: Names,
  snapshot: Snapshot,
): void {
  const { rateSource, rateEra } = kept.fit.compiled.problem;
  const known = { rateSource, rateEra, markets: kept.markets };
  names.forEach((name, c) => {
    const at = (kept.rateOf.get(name) ?? -1) * N_READINGS;
    const cell = { source: problem.rateSource[c]!, era: problem.rateEra[c]!, market: markets[c]! };
    const shares =
      at < 0
        ? unseenShares(known, kinds, snapshot, cell)
        : snapshot.rates.shares.subarray(at, at + N_READINGS);
    rates.shares.set(shares, c * N_READINGS);
  });
}

function loadHists(kept: Kept, state: State, { series }: Names, snapshot: Snapshot): void {
  series.forEach((name, h) => {
    const from = h < FIXED_HISTS ? h : (kept.histOf.get(name) ?? COVER_HIST);
    const bins = (all: Float64Array) => all.subarray(from * BINS, (from + 1) * BINS);
    state.histMass.set(bins(snapshot.histMass), h * BINS);
    state.histDensity.set(bins(snapshot.histDensity), h * BINS);
  });
}

/** Counts of weekdays by the numbers that a part gives to habits and markets. */
export function weekdaysOf(
  kept: Kept,
  { events, compiled: { problem } }: Part,
  { habitCounts, marketCounts, allCounts }: Pick<WeekdayCounts, CountsByWeekday>,
): AverageWeek {
  const whole = kept.fit.compiled.problem;
  const counts = {
    habitCounts: new Float64Array(problem.nHabits * 7),
    marketCounts: new Float64Array(problem.nMarkets * 7),
    allCounts: Float64Array.from(allCounts),
  };
  events.forEach((e, i) => {
    for (let w = 0; w < 7; w++) {
      counts.habitCounts[problem.habitOf[i]! * 7 + w] = habitCounts[whole.habitOf[e]! * 7 + w]!;
      counts.marketCounts[problem.marketOf[i]! * 7 + w] = marketCounts[whole.marketOf[e]! * 7 + w]!;
    }
  });
  return counts;
}

type CountsByWeekday = 'habitCounts' | 'marketCounts' | 'allCounts';

function loadWeekdays(kept: Kept, part: Part, state: State, snapshot: Snapshot): void {
  const { habitCounts, marketCounts, allCounts } = weekdaysOf(kept, part, snapshot);
  state.habitCounts.set(habitCounts);
  state.marketCounts.set(marketCounts);
  state.allCounts.set(allCounts);
}

function loadDays({ events, compiled: { problem } }: Part, state: State, { day }: Snapshot): void {
  events.forEach((e, i) => {
    state.day[i] = day[e]!;
    state.cell[i] = cellHolding(problem, i, day[e]!) - problem.cellStart[i]!;
  });
}

function loadCopies(
  kept: Kept,
  part: Part,
  state: State,
  { runs }: Names,
  { parentOf, runCopied }: Snapshot,
): void {
  const whole = kept.fit.compiled.problem;
  const { problem } = part.compiled;
  const isCopied = (known: number | undefined) =>
    known === undefined ? state.random.uniform() < state.copyRate[1]! : runCopied[known] === 1;
  const copied = runs.map((name) => isCopied(kept.runOf.get(name)));
  for (let v = 0; v < problem.nViews; v++) {
    const held = part.views[v]!;
    const run = problem.viewRun[v]!;
    const parent = run < 0 || !copied[run] ? -1 : parentOf[problem.viewSource[v]!]!;
    const [laid, own] = held < 0 ? [problem, v] : [whole, held];
    const from = parent < 0 ? -1 : viewOf(laid, own, parent);
    state.copyOf[v] = from < 0 ? -1 : v;
    if (from >= 0) state.copyMatch[v] = matchOf(laid, own, from);
  }
}
