import type { SourceKind } from '../evidence/index.ts';
import { type Chance, chance } from '../maths/index.ts';
import { sweep, type Workshop } from './chain.ts';
import { fitOf } from './fit.ts';
import type { Problem } from './problem.ts';
import { fillShares, tiltSource } from './rates.ts';
import { createState, type State } from './state.ts';

/** Most sources that are believed in a beginning of their own. */
const MOST_BELIEVED = 4;
/** Sources that date fewer releases than this share of the most that any dates are not. */
const COVERS = 0.4;
/** By how much a believed source's log odds of all errors are lowered, and the others' raised. */
const BELIEF = 3;
const DISBELIEF = 1;
/** Share of a beginning's sweeps after which a believed source may have a lag. */
const FREE_FROM = 0.5;
/** A share of a beginning's sweeps that is not reached. */
const NEVER = 1;
/** Share of a beginning's sweeps after which weekday habits count. */
const WEEKDAYS_FROM = 0.4;

/**
 * What chains begin with: no source believed (−1), or one of those that date most releases. "All late
 * by three days" and "one early by three days" fit alike, and no step of a chain crosses from one to
 * the other; so each is tried, and chains are shared out by how well each fits in its last sweeps,
 * the scatter of that fit included.
 *
 * @param plan sweeps that all trials share, and how many chains there are
 * @returns a source, or −1, for each chain
 */
export function beginnings(
  problem: Problem,
  kinds: readonly SourceKind[],
  shop: Workshop,
  { begin, chains }: { readonly begin: number; readonly chains: number },
  seed: number,
  onSweep: () => void,
): number[] {
  if (chains === 1) return [-1];
  const believed = [-1, ...mostCovering(problem)];
  const sweeps = Math.max(4, Math.floor(begin / believed.length));
  const fits = believed.map((source, b) => {
    const state = createState(problem, kinds, chance(seed * 1009 + 500 + b));
    const list: number[] = [];
    warmUp(problem, state, shop, { source, sweeps, parents: NEVER, every: 1 }, (i) => {
      if (i >= sweeps / 2) list.push(fitOf(problem, state));
      onSweep();
    });
    return list;
  });
  const shares = sharesOf(fits, chance(seed * 1009 + 499));
  return spreadOut(shares, chains).map((b) => believed[b]!);
}

/** How a chain begins. */
export interface Beginning {
  /** The source that is believed, or −1. */
  readonly source: number;
  readonly sweeps: number;
  /** Share of the sweeps after which sources may derive from each other. */
  readonly parents: number;
  /** Lags and parents are drawn every so many sweeps. */
  readonly every: number;
}

/**
 * Warms up a chain. Weekdays are even at first, and a believed source is free to have a lag in the
 * second half only: before rates are known, a weekday habit feeds on itself.
 */
export function warmUp(
  problem: Problem,
  state: State,
  shop: Workshop,
  begun: Beginning,
  onSweep: (i: number) => void,
): void {
  const { source, sweeps, parents, every } = begun;
  if (source >= 0) believe(problem, state, source);
  for (let i = 0; i < sweeps; i++) {
    state.evenWeek = i < sweeps * WEEKDAYS_FROM;
    const believed = i < sweeps * FREE_FROM ? source : -1;
    const lags = i % every === 0;
    sweep(problem, state, shop, { lags, parents: lags && i >= sweeps * parents, believed });
    onSweep(i);
  }
}

/** Sources by how many releases they date, as far as they date many. */
function mostCovering({ nSources, nViews, viewSource, viewRate }: Problem): number[] {
  const counts = new Int32Array(nSources);
  for (let v = 0; v < nViews; v++) if (viewRate[v]! >= 0) counts[viewSource[v]!]!++;
  const most = Math.max(...counts);
  return Array.from(counts, (n, s) => ({ n, s }))
    .filter(({ n }) => n > 0 && n >= COVERS * most)
    .sort((a, b) => b.n - a.n || a.s - b.s)
    .slice(0, MOST_BELIEVED)
    .map(({ s }) => s);
}

function believe(problem: Problem, state: State, source: number) {
  for (let s = 0; s < problem.nSources; s++)
    tiltSource(state.rates, s, s === source ? -BELIEF : DISBELIEF);
  fillShares(state.rates, problem, state.lagOf);
}

const TRIES = 400;

/** How often each beginning would be picked by its fit, if any one of its fits is as good as another. */
function sharesOf(fits: readonly (readonly number[])[], random: Chance): Float64Array {
  const shares = new Float64Array(fits.length);
  if (fits.length === 1) return shares.fill(1);
  for (let t = 0; t < TRIES; t++) {
    const drawn = fits.map((list) => list[random.below(list.length)]!);
    const most = Math.max(...drawn);
    const weights = drawn.map((fit) => Math.exp(fit - most));
    const total = weights.reduce((a, b) => a + b, 0);
    weights.forEach((w, b) => {
      shares[b]! += w / total / TRIES;
    });
  }
  return shares;
}

/** Picks `n` by evenly spaced points of the shares' running sum. */
function spreadOut(shares: Float64Array, n: number): number[] {
  const picks: number[] = [];
  let sum = 0;
  shares.forEach((share, b) => {
    sum += share;
    while (picks.length < n && (picks.length + 0.5) / n < sum) picks.push(b);
  });
  while (picks.length < n) picks.push(shares.length - 1);
  return picks;
}
