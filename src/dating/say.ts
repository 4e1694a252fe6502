import { type Claim, civilOf, type Evidence } from '../evidence/index.ts';
import type { Compiled } from './compile.ts';
import type { ReleaseEvent } from './events.ts';
import { MAX_LAGS } from './problem.ts';
import { ROW_SHIFT, SIBLING } from './readings.ts';
import { bestDay, type DayWeights } from './spread.ts';
import type { Tally } from './tally.ts';
import type { Reading } from './types.ts';
import { sayLength } from './words.ts';

/** What the explanations of a dossier's claims are drawn from. */
export interface Findings {
  readonly evidence: Evidence;
  readonly compiled: Compiled;
  readonly tally: Tally;
  /** Distribution of each event's day. */
  readonly weights: readonly DayWeights[];
}

/** A reading of a claim in words. */
export function sayReading(
  findings: Findings,
  v: number,
  claim: Claim,
  reading: Reading,
  e: number,
): string {
  const { day } = bestDay(findings.weights[e]!);
  switch (reading) {
    case 'right':
      return claim.property === 'label-year' ? 'the year of release' : 'as it says';
    case 'next-day':
      return 'one day off, as across the date line';
    case 'few-days':
      return `off by ${sayLength((claim.date!.ranges[0]!.first as number) - day)}, a slip or a late parcel`;
    case 'swapped':
      return 'day and month swapped';
    case 'first-of-month':
      return 'the first of the month, standing for the month';
    case 'year-off':
      return 'the right day in the wrong year';
    case 'other-moment':
      return sayLag(findings, v);
    case 'row-shift':
      return `out of step with the rows beside it: the day of ${linked(findings, v, ROW_SHIFT)}`;
    case 'filled-in':
      return 'one day filled in for many';
    case 'sibling':
      return `the day of ${linked(findings, v, SIBLING)}, the same product elsewhere`;
    case 'copied':
      return `taken from ${parentName(findings, v)}`;
    case 'pen':
      return 'a slip of the pen in this row; the source says otherwise on its other rows';
    case 'lead':
      return sayLead(claim, day);
    case 'bound':
      return sayBound(claim);
    case 'cover-year':
      return sayYear(claim, day);
    case 'noise':
      return 'fits no known way of going wrong';
  }
}

function sayLag({ compiled: { problem }, tally }: Findings, v: number): string {
  const s = problem.viewSource[v]!;
  let best = 0;
  for (let l = 1; l < MAX_LAGS; l++)
    if (tally.lags[s * MAX_LAGS + l]! > tally.lags[s * MAX_LAGS + best]!) best = l;
  const lag = problem.lags[s * MAX_LAGS + best]!;
  return `another moment of the release, ${sayLength(lag)} ${lag > 0 ? 'after' : 'before'} it, as this source is wont`;
}

function linked(
  { evidence, compiled: { problem, releases }, weights }: Findings,
  v: number,
  reading: number,
): string {
  let best = '';
  let most = -1;
  for (let j = problem.linkStart[v]!; j < problem.linkStart[v + 1]!; j++) {
    if (problem.linkReading[j] !== reading) continue;
    const { days, p } = weights[problem.linkEvent[j]!]!;
    let mass = 0;
    days.forEach((d, i) => {
      if (d >= problem.viewLo[v]! && d <= problem.viewHi[v]!) mass += p[i]!;
    });
    if (mass <= most) continue;
    most = mass;
    best = nameOfEvent(evidence, releases.events[problem.linkEvent[j]!]!);
  }
  return best || 'another';
}

function parentName({ evidence, compiled: { problem }, tally }: Findings, v: number): string {
  const row = problem.viewSource[v]! * problem.nSources;
  let best = 0;
  for (let q = 1; q < problem.nSources; q++)
    if (tally.parents[row + q]! > tally.parents[row + best]!) best = q;
  return nameOf(evidence, best);
}

function nameOf(evidence: Evidence, source: number): string {
  const { title, id } = evidence.sources[source]!;
  return title ?? id;
}

function sayLead({ property, date }: Claim, day: number): string {
  const first = date!.ranges[0]!.first as number;
  const gap = sayLength(first - day);
  if (property === 'cover-date') {
    return first > day
      ? `the cover runs ${gap} ahead of sale`
      : 'the cover is no later than the sale';
  }
  if (property === 'printed-on') return `printed ${gap} before release`;
  const last = date!.ranges.at(-1)!.last;
  if (day > last) return `planned, and came ${sayLength(day - last)} late`;
  return day < first ? `planned, and came ${gap} early` : 'planned, and kept';
}

function sayBound({ property }: Claim): string {
  switch (property) {
    case 'seen-by':
      return 'seen, so released by then';
    case 'not-before':
      return 'not out before then';
    case 'unlisted-on':
      return 'not listed then, so probably not yet out';
    case 'distributed-until':
      return 'still given out then, so released before';
    case 'copyright-year':
      return 'a copyright year at or before release';
    default:
      return 'a bound on the release';
  }
}

function sayYear({ property, date }: Claim, day: number): string {
  const off = civilOf(date!.ranges[0]!.first as number).year - civilOf(day).year;
  if (property !== 'label-year') return 'fits no known way of going wrong';
  if (off === 1) return "most probably the cover's year, one too late";
  return off === -1
    ? 'one year too early'
    : `${Math.abs(off)} years too ${off > 0 ? 'late' : 'early'}`;
}

/** What a release is called in a sentence: a printing that it holds, or its product. */
function nameOfEvent(
  { printings, products }: Evidence,
  { members, product }: ReleaseEvent,
): string {
  const title = products.find(({ id }) => id === product)?.title ?? product;
  return members.length > 0 ? printings[members[0]!]!.id : title;
}
