import { type Claim, civilOf, type Evidence, sayDay } from '../evidence/index.ts';
import type { Compiled } from './compile.ts';
import { FEW_DAYS_REACH } from './kernels.ts';
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
  /** What each event is called, article included. */
  readonly names: readonly string[];
}

/** A reading of a claim in words that follow *it is most probably*. */
export function sayReading(
  findings: Findings,
  v: number,
  claim: Claim,
  reading: Reading,
  e: number,
): string {
  const { day } = bestDay(findings.weights[e]!);
  const late = distance(claim, day);
  switch (reading) {
    case 'right':
      return claim.property === 'label-year' ? 'the year of release' : 'as it says';
    case 'next-day':
      return `a day ${Math.abs(late) === 1 ? lateOrEarly(late) : 'off'}, as across the date line`;
    case 'few-days':
      return sayFewDays(late);
    case 'swapped':
      return saySwapped(claim, day);
    case 'first-of-month':
      return 'the first of the month, standing for the whole month';
    case 'year-off':
      return 'the right day in the wrong year';
    case 'other-moment':
      return sayLag(findings, v);
    case 'row-shift':
      return `a row out of step, with the day of ${linked(findings, v, ROW_SHIFT)}`;
    case 'cover-date':
      return 'the date on the cover taken for the day of sale';
    case 'filled-in':
      return 'a day filled in wherever none was known';
    case 'sibling':
      return `the day of ${linked(findings, v, SIBLING)}, another release of the same product`;
    case 'copied':
      return sayCopied(findings, v, e);
    case 'pen':
      return 'a slip of the pen in this row; the source says otherwise on its other rows';
    case 'lead':
      return sayLead(claim, day);
    case 'bound':
      return sayBound(claim);
    case 'cover-year':
      return sayYear(findings, claim, day, e);
    case 'noise':
      return sayNoise(findings, v, e);
  }
}

/** Days from a day to the nearest that a claim can mean: positive where the claim is late. */
function distance({ date }: Claim, day: number): number {
  const first = date!.ranges[0]!.first;
  const last = date!.ranges.at(-1)!.last;
  return day < first ? first - day : day > last ? last - day : 0;
}

const lateOrEarly = (late: number) => (late > 0 ? 'late' : 'early');

function sayFewDays(late: number): string {
  if (late === 0 || Math.abs(late) > FEW_DAYS_REACH) return 'a few days off';
  return `${sayLength(late)} ${lateOrEarly(late)}, as ${late > 0 ? 'parcels' : 'first sales'} can be`;
}

function saySwapped({ date }: Claim, day: number): string {
  const right = civilOf(day);
  const said = civilOf(date!.ranges[0]!.first);
  const swapped = right.month === said.dayOfMonth && right.dayOfMonth === said.month;
  return `${swapped ? `${sayDay(day)} with ` : ''}day and month swapped`;
}

function sayLag({ compiled: { problem }, tally }: Findings, v: number): string {
  const s = problem.viewSource[v]!;
  let best = 0;
  for (let l = 1; l < MAX_LAGS; l++)
    if (tally.lags[s * MAX_LAGS + l]! > tally.lags[s * MAX_LAGS + best]!) best = l;
  const lag = problem.lags[s * MAX_LAGS + best]!;
  return `another moment of the release, ${sayLength(lag)} ${lag > 0 ? 'after' : 'before'} it, as is this source's habit`;
}

function linked(
  { compiled: { problem }, weights, names }: Findings,
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
    best = names[problem.linkEvent[j]!]!;
  }
  return best || 'another release';
}

function sayCopied(findings: Findings, v: number, e: number): string {
  const { evidence, tally } = findings;
  const { problem, statements } = findings.compiled;
  const row = problem.viewSource[v]! * problem.nSources;
  let parent = 0;
  for (let q = 1; q < problem.nSources; q++)
    if (tally.parents[row + q]! > tally.parents[row + parent]!) parent = q;
  const { property } = statements[problem.viewStatement[v]!]!;
  const from = viewsOf(findings, e).filter(
    (u) =>
      problem.viewSource[u] === parent &&
      statements[problem.viewStatement[u]!]!.property === property,
  );
  const apart = from.every(
    (u) => problem.viewLo[u]! > problem.viewHi[v]! || problem.viewHi[u]! < problem.viewLo[v]!,
  );
  const name = nameOf(evidence, parent);
  return from.length > 0 && apart ? `miscopied from ${name}` : `taken from ${name}`;
}

function viewsOf({ compiled: { problem } }: Findings, e: number): number[] {
  const start = problem.viewStart[e]!;
  return Array.from({ length: problem.viewStart[e + 1]! - start }, (_, j) => start + j);
}

function nameOf(evidence: Evidence, source: number): string {
  const { title, id } = evidence.sources[source]!;
  return title ?? id;
}

function sayLead({ property, date }: Claim, day: number): string {
  const first = date!.ranges[0]!.first;
  const last = date!.ranges.at(-1)!.last;
  const gap = sayLength(first - day);
  if (property === 'cover-date') {
    return first > day
      ? `the cover runs ${gap} ahead of sale`
      : 'the cover is dated no later than the sale';
  }
  if (property === 'printed-on')
    return first < day ? `printed ${gap} before release` : 'printed by the day of release';
  if (day > last) return `planned for then, but came ${sayLength(day - last)} late`;
  return day < first ? `planned for then, but came ${gap} early` : 'planned for then, and kept';
}

function sayBound({ property }: Claim): string {
  switch (property) {
    case 'seen-by':
      return 'seen by then, so already out';
    case 'not-before':
      return 'not out before then';
    case 'unlisted-on':
      return 'not listed then, so probably not yet out';
    case 'distributed-until':
      return 'still given out then, so released before';
    case 'copyright-year':
      return 'a copyright year, which is that of release or before it';
    default:
      return 'a bound on the release';
  }
}

/** A label's year that is not that of release: the cover's, where there is a cover. */
function sayYear(findings: Findings, { date }: Claim, day: number, e: number): string {
  const off = civilOf(date!.ranges[0]!.first).year - civilOf(day).year;
  const years = Math.abs(off) === 1 ? 'one year' : `${Math.abs(off)} years`;
  if (off === 0) return 'another year than that of release';
  const { problem, statements } = findings.compiled;
  const covered = viewsOf(findings, e).some(
    (u) => statements[problem.viewStatement[u]!]!.property === 'cover-date',
  );
  return `${off === 1 && covered ? "the cover's year, " : ''}${years} too ${lateOrEarly(off)}`;
}

const OTHER_DATES: Readonly<Record<string, string>> = {
  'cover-date': 'the date of the cover',
  announced: 'the day that was planned',
  'printed-on': 'the day of printing',
};

/** What no reading explains; where another claim has that date for something else, that is said. */
function sayNoise(findings: Findings, v: number, e: number): string {
  const { problem, statements } = findings.compiled;
  const property = (u: number) => statements[problem.viewStatement[u]!]!.property;
  const other = viewsOf(findings, e).find(
    (u) => property(u) in OTHER_DATES && problem.viewLo[u] === problem.viewLo[v],
  );
  if (property(v) !== 'on-sale' || other === undefined)
    return 'simply wrong: no known slip explains it';
  return `simply wrong; it is ${OTHER_DATES[property(other)]}`;
}
