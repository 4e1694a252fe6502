import { drawReadings } from './attribution.ts';
import { drawTogether } from './coincidence.ts';
import { drawDay, fillProduct, liftDay, setDay } from './days.ts';
import { drawDescent, hold, viewsChanged } from './derivation.ts';
import { drawDirection } from './flip.ts';
import { drawGroup, type Group } from './groups.ts';
import type { Kinship } from './kinship.ts';
import { drawLag } from './lag-draw.ts';
import { changeViews, predictViews } from './predict.ts';
import type { Problem } from './problem.ts';
import { drawRates, fillShares } from './rates.ts';
import { drawHists, NO_DAY, type State } from './state.ts';
import { addEvent, addSweep, type Tally } from './tally.ts';

/** What a sweep draws of the sources besides their rates. */
export interface Step {
  readonly lags: boolean;
  /** Whom each derives from; only together with the lags. */
  readonly parents: boolean;
  /** A source that is held to date the release itself. */
  readonly believed?: number;
}

/** What does not change from sweep to sweep. */
export interface Workshop {
  readonly kin: Kinship;
  /** For each source, its views that belong to a run. */
  readonly viewsOf: readonly Int32Array[];
  /** Groups of events whose days are drawn together. */
  readonly groups: readonly Group[];
  /** The other events, sequence facts' earlier ones first. */
  readonly eventOrder: Int32Array;
}

/**
 * One sweep of the Gibbs sampler (`geman:1984`): for each source its lag and its parent, with the
 * days integrated out; every day; every reading; rates, histograms and copying.
 *
 * @param step what is drawn of the sources besides their rates
 * @param tally what the sweep's conditional probabilities are added to, if it is kept
 */
export function sweep(
  problem: Problem,
  state: State,
  shop: Workshop,
  step: Step,
  tally?: Tally,
): void {
  if (step.lags) drawSources(problem, state, shop, step);
  for (const group of shop.groups) {
    if (!drawGroup(problem, state, group, tally))
      throw new RangeError('the sequence leaves no day');
  }
  for (const e of shop.eventOrder) {
    liftDay(problem, state, e);
    fillProduct(problem, state, e);
    const total = drawDay(problem, state, e);
    if (tally) addEvent(tally, problem, state, e, total);
  }
  learn(problem, state, tally);
}

function drawSources(problem: Problem, state: State, shop: Workshop, step: Step) {
  for (let e = 0; e < problem.nEvents; e++) {
    const day = state.day[e]!;
    liftDay(problem, state, e);
    fillProduct(problem, state, e);
    if (day !== NO_DAY) setDay(problem, state, e, state.cell[e]!, day);
  }
  for (let s = 0; s < problem.nSources; s++) {
    if (s === step.believed) continue;
    const parent = state.parentOf[s]!;
    const turnable = parent >= 0 && state.parentOf[parent] === -1;
    const copy = turnable ? drawDirection(problem, state, s, shop.kin, shop.viewsOf) : s;
    drawSource(problem, state, copy, shop, step.parents);
    if (copy !== s) drawSource(problem, state, s, shop, step.parents);
  }
}

function drawSource(
  problem: Problem,
  state: State,
  s: number,
  { viewsOf, kin }: Workshop,
  parents: boolean,
) {
  const views = viewsOf[s]!;
  if (views.length === 0) return;
  let prediction = predictViews(problem, state, views, problem.nLags[s]!);
  const lag = drawLag(problem, state, s, views, prediction);
  if (lag !== state.lagOf[s]) {
    changeViews(problem, state, views, () => {
      state.lagOf[s] = lag;
      fillShares(state.rates, problem, state.lagOf);
    });
    prediction = predictViews(problem, state, views, 0);
  }
  if (!parents) return;
  const descent = drawDescent(problem, state, s, kin, prediction);
  const changed = viewsChanged(problem, state, s, kin, descent);
  changeViews(problem, state, changed, () => hold(problem, state, s, kin, descent));
}

/** Share of its runs that a source takes at least from one that it derives from. Judgement. */
const LEAST_COPIED = 0.5;

/** Draws everything that is learned, given days and readings. */
function learn(problem: Problem, state: State, tally: Tally | undefined) {
  const { copied, plain } = drawReadings(
    problem,
    state,
    tally?.guarded.at(-1) ? undefined : tally?.readings,
  );
  if (tally) addSweep(tally, problem, state);
  drawRates(state.rates, problem, state.counts, state.lagOf, state.random);
  drawHists(state, problem.nHists);
  drawTogether(problem, state);
  state.copyRate[0] = beta(state, 8 + copied, 1.5 + plain);
  let yes = 0;
  let no = 0;
  for (let run = 0; run < problem.nRuns; run++) {
    if (state.parentOf[problem.runSource[run]!]! < 0) continue;
    if (state.runCopied[run]) yes++;
    else no++;
  }
  state.copyRate[1] = Math.max(LEAST_COPIED, beta(state, 3 + yes, 1.5 + no));
}

function beta(state: State, a: number, b: number): number {
  const x = state.random.gamma(a);
  const y = state.random.gamma(b);
  return Math.min(0.995, x / (x + y));
}
