import { drawReadings } from './attribution.ts';
import { drawTogether } from './coincidence.ts';
import { drawDay, fillProduct } from './days.ts';
import { drawParent } from './derivation.ts';
import { drawDirection } from './flip.ts';
import { drawGroup, type Group } from './groups.ts';
import type { Kinship } from './kinship.ts';
import { drawLag } from './lag-draw.ts';
import { fillRow, refreshRow } from './likelihood.ts';
import { applyViews, predictViews } from './predict.ts';
import type { Problem } from './problem.ts';
import { drawRates, fillShares } from './rates.ts';
import { drawHists, NO_DAY, type State } from './state.ts';
import { addEvent, addSweep, type Tally } from './tally.ts';
import { countWeekday } from './weekdays.ts';

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
 * One sweep of the Gibbs sampler (`geman:1984`): rows and products; for each source its lag and its
 * parent, with the days integrated out; every day; every reading; rates, histograms and copying.
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
  for (let v = 0; v < problem.nViews; v++) fillRow(problem, state, v);
  if (step.lags) drawSources(problem, state, shop, step);
  for (const group of shop.groups) {
    for (const e of group.events) refreshEvent(problem, state, e);
    if (!drawGroup(problem, state, group, tally))
      throw new RangeError('the sequence leaves no day');
  }
  for (const e of shop.eventOrder) {
    refreshEvent(problem, state, e);
    if (state.day[e] !== NO_DAY) countWeekday(problem, state, e, -1);
    fillProduct(problem, state, e);
    const total = drawDay(problem, state, e);
    if (tally) addEvent(tally, problem, state, e, total);
  }
  learn(problem, state, tally);
}

function refreshEvent(problem: Problem, state: State, e: number) {
  for (let v = problem.viewStart[e]!; v < problem.viewStart[e + 1]!; v++)
    refreshRow(problem, state, v);
}

function drawSources(problem: Problem, state: State, shop: Workshop, step: Step) {
  for (let e = 0; e < problem.nEvents; e++) {
    leaveOut(problem, state, e, () => fillProduct(problem, state, e));
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

/** Does something while an event's own day is not among the counts of weekdays. */
function leaveOut(problem: Problem, state: State, e: number, act: () => void) {
  const dated = state.day[e] !== NO_DAY;
  if (dated) countWeekday(problem, state, e, -1);
  act();
  if (dated) countWeekday(problem, state, e, 1);
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
  applyViews(problem, state, views, -1);
  let prediction = predictViews(problem, state, views);
  if (drawLag(problem, state, s, views, prediction)) {
    refill(problem, state, views);
    prediction = predictViews(problem, state, views);
  }
  if (parents && drawParent(problem, state, s, kin, prediction)) refill(problem, state, views);
  applyViews(problem, state, views, 1);
}

function refill(problem: Problem, state: State, views: Int32Array) {
  fillShares(state.rates, problem, state.lagOf);
  for (const v of views) fillRow(problem, state, v);
}

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
  state.copyRate[1] = beta(state, 3 + yes, 1.5 + no);
}

function beta(state: State, a: number, b: number): number {
  const x = state.random.gamma(a);
  const y = state.random.gamma(b);
  return Math.min(0.995, x / (x + y));
}
