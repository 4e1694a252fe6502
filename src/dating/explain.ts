import { type Claim, civilOf, type DayRange, type Evidence, isoOf } from '../evidence/index.ts';
import { COPIED } from './attribution.ts';
import type { Compiled } from './compile.ts';
import { MAX_LAGS } from './problem.ts';
import {
  DAY_AFTER,
  DAY_BEFORE,
  FEW_DAYS,
  FILLED_IN,
  FIRST_OF_MONTH,
  N_READINGS,
  NOISE,
  OTHER_MOMENT,
  RIGHT,
  ROW_SHIFT,
  SIBLING,
  SWAPPED,
  YEAR_OFF,
} from './readings.ts';
import type { DayWeights } from './spread.ts';
import type { Tally } from './tally.ts';
import type { ExplainedClaim, Reading } from './types.ts';
import { sayLength } from './words.ts';

const NAMES: readonly (readonly [number, Reading])[] = [
  [RIGHT, 'right'],
  [DAY_BEFORE, 'next-day'],
  [DAY_AFTER, 'next-day'],
  [FEW_DAYS, 'few-days'],
  [SWAPPED, 'swapped'],
  [FIRST_OF_MONTH, 'first-of-month'],
  [YEAR_OFF, 'year-off'],
  [OTHER_MOMENT, 'other-moment'],
  [ROW_SHIFT, 'row-shift'],
  [FILLED_IN, 'filled-in'],
  [SIBLING, 'sibling'],
  [NOISE, 'noise'],
  [COPIED, 'copied'],
];

/** What the explanations of a dossier's claims are drawn from. */
export interface Findings {
  readonly evidence: Evidence;
  readonly compiled: Compiled;
  readonly tally: Tally;
  /** Distribution of each event's day. */
  readonly weights: readonly DayWeights[];
}

/** Every dated claim that concerns an event, with its probability of being right and its reading. */
export function explainEvent(findings: Findings, e: number): ExplainedClaim[] {
  const { problem, statements } = findings.compiled;
  const out: ExplainedClaim[] = [];
  for (let v = problem.viewStart[e]!; v < problem.viewStart[e + 1]!; v++) {
    for (const c of statements[problem.viewStatement[v]!]!.claims)
      out.push(explainClaim(findings, v, c));
  }
  return out;
}

function explainClaim(findings: Findings, v: number, c: number): ExplainedClaim {
  const claim = findings.evidence.claims[c]!;
  const e = findings.compiled.problem.viewEvent[v]!;
  const p_right = holds(findings, v, claim);
  const chances =
    claim.property === 'on-sale'
      ? readingsOf(findings, v, claim, p_right)
      : plainReading(claim, p_right);
  const [best, ...others] = chances;
  const say = (reading: Reading) => sayReading(findings, v, claim, reading, e);
  const bound = BOUNDS.has(claim.property) || claim.property === 'cover-date';
  return {
    row: claim.row,
    source: claim.source,
    property: claim.property,
    value: claim.value,
    p_right: round(p_right),
    explanation: say(best!.reading),
    reading: best!.reading,
    p_reading: round(best!.p),
    others: others
      .filter(({ p }) => p >= 0.02)
      .slice(0, 3)
      .map(({ reading, p }) => ({ reading, explanation: say(reading), p: round(p) })),
    slip: p_right < 0.5 && !bound,
    span: spanOf(claim),
  };
}

const BOUNDS = new Set([
  'seen-by',
  'not-before',
  'unlisted-on',
  'distributed-until',
  'printed-on',
  'announced',
]);

const round = (p: number) => Math.round(Math.min(1, Math.max(0, p)) * 1e6) / 1e6;

function spanOf({ date }: Claim): readonly [string | null, string | null] {
  const first = date!.ranges[0]!.first;
  const last = date!.ranges.at(-1)!.last;
  return [Number.isFinite(first) ? isoOf(first) : null, Number.isFinite(last) ? isoOf(last) : null];
}

/** Probability that the claim's value holds for its own property, for any event it may concern. */
function holds({ compiled, weights }: Findings, v: number, claim: Claim): number {
  const { problem } = compiled;
  let none = 1 - massWhere(weights[problem.viewEvent[v]!]!, claim);
  for (let o = problem.viewRing[v]!; o !== v; o = problem.viewRing[o]!) {
    none *= 1 - massWhere(weights[problem.viewEvent[o]!]!, claim);
  }
  return 1 - none;
}

function massWhere({ days, p }: DayWeights, { property, date }: Claim): number {
  const first = date!.ranges[0]!.first;
  const last = date!.ranges.at(-1)!.last;
  let sum = 0;
  for (let j = 0; j < days.length; j++) {
    const day = days[j]!;
    if (isRight(property, day, first, last, date!.ranges)) sum += p[j]!;
  }
  return sum;
}

function isRight(
  property: string,
  day: number,
  first: number,
  last: number,
  ranges: readonly DayRange[],
): boolean {
  switch (property) {
    case 'seen-by':
    case 'distributed-until':
      return day <= last;
    case 'not-before':
    case 'printed-on':
      return day >= first;
    case 'unlisted-on':
      return day > (Number.isFinite(last) ? last : first);
    case 'copyright-year':
      return day >= first;
    case 'cover-date':
      return day <= last + 70 && day >= first - 300;
    case 'announced':
      return day >= first - 7;
    default:
      return ranges.some((r) => r.first <= day && day <= r.last);
  }
}

interface Chance {
  readonly reading: Reading;
  readonly p: number;
}

/** Readings of an on-sale claim with their probability, likeliest first. */
function readingsOf(findings: Findings, v: number, claim: Claim, p_right: number): Chance[] {
  const { problem, statements } = findings.compiled;
  if (problem.viewRing[v] !== v && p_right >= 0.5) return [{ reading: 'right', p: p_right }];
  const main = statements[problem.viewStatement[v]!]!.values[0]!.spans;
  const own = claim.date!.ranges;
  const pen =
    main.length !== own.length || main[0]!.lo < own[0]!.first || main.at(-1)!.hi > own.at(-1)!.last;
  if (pen)
    return [{ reading: p_right >= 0.5 ? 'right' : 'pen', p: Math.max(p_right, 1 - p_right) }];
  const sums = new Map<Reading, number>();
  const row = v * (N_READINGS + 1);
  for (const [r, name] of NAMES) {
    const p = findings.tally.readings[row + r]! / findings.tally.sweeps;
    sums.set(name, (sums.get(name) ?? 0) + p);
  }
  if (own.length > 1 || own[0]!.first !== own[0]!.last) foldLocal(sums, p_right);
  return [...sums].map(([reading, p]) => ({ reading, p })).sort((a, b) => b.p - a.p);
}

const LOCAL_READINGS: readonly Reading[] = [
  'right',
  'next-day',
  'few-days',
  'swapped',
  'first-of-month',
  'year-off',
];

/** A value of several days hardly tells how it came about: it holds the day, or misses it closely. */
function foldLocal(sums: Map<Reading, number>, p_right: number) {
  const local = LOCAL_READINGS.reduce((sum, name) => sum + (sums.get(name) ?? 0), 0);
  for (const name of LOCAL_READINGS) sums.delete(name);
  sums.set('right', Math.min(local, p_right));
  sums.set('few-days', Math.max(0, local - p_right));
}

/** Claims whose property has a lead, a lag or a bound of its own. */
function plainReading(claim: Claim, p_right: number): Chance[] {
  const good: Reading =
    claim.property === 'cover-date' ||
    claim.property === 'announced' ||
    claim.property === 'printed-on'
      ? 'lead'
      : BOUNDS.has(claim.property) || claim.property === 'copyright-year'
        ? 'bound'
        : 'right';
  const bad: Reading = claim.property === 'label-year' ? 'cover-year' : 'noise';
  const pair: Chance[] = [
    { reading: good, p: p_right },
    { reading: bad, p: 1 - p_right },
  ];
  return pair.sort((a, b) => b.p - a.p);
}

function sayReading(
  findings: Findings,
  v: number,
  claim: Claim,
  reading: Reading,
  e: number,
): string {
  const day = bestOf(findings.weights[e]!);
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

function bestOf({ days, p }: DayWeights): number {
  let best = 0;
  for (let j = 1; j < p.length; j++) if (p[j]! > p[best]!) best = j;
  return days[best]!;
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
    best = evidence.printings[releases.events[problem.linkEvent[j]!]!.members[0]!]!.id;
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

/** What a source is called in a sentence. */
export function nameOf(evidence: Evidence, source: number): string {
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
