import { type Civil, type Claim, civilOf, type DayRange, isoOf } from '../evidence/index.ts';
import { COPIED } from './attribution.ts';
import {
  COVER_DATE,
  DAY_AFTER,
  DAY_BEFORE,
  FEW_DAYS,
  FILLED_IN,
  FIRST_OF_MONTH,
  N_READINGS,
  NEAR_MOMENT,
  NOISE,
  OTHER_MOMENT,
  RIGHT,
  ROW_SHIFT,
  SIBLING,
  SWAPPED,
  YEAR_OFF,
} from './readings.ts';
import { type Findings, sayReading } from './say.ts';
import type { DayWeights } from './spread.ts';
import type { ExplainedClaim, Reading } from './types.ts';

const NAMES: readonly (readonly [number, Reading])[] = [
  [RIGHT, 'right'],
  [DAY_BEFORE, 'next-day'],
  [DAY_AFTER, 'next-day'],
  [FEW_DAYS, 'few-days'],
  [SWAPPED, 'swapped'],
  [FIRST_OF_MONTH, 'first-of-month'],
  [YEAR_OFF, 'year-off'],
  [OTHER_MOMENT, 'other-moment'],
  [NEAR_MOMENT, 'other-moment'],
  [COVER_DATE, 'cover-date'],
  [ROW_SHIFT, 'row-shift'],
  [FILLED_IN, 'filled-in'],
  [SIBLING, 'sibling'],
  [NOISE, 'noise'],
  [COPIED, 'copied'],
];

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
  const bound = BOUNDS.has(claim.property) || claim.property === 'cover-date';
  const slip = p_right < 0.5 && !bound;
  const [best, ...others] = slip ? wrongFirst(chances) : chances;
  const elsewhere = p_right >= 0.5 ? heldElsewhere(findings, v, claim) : undefined;
  const say = (reading: Reading) =>
    elsewhere && reading === 'right'
      ? `as it says, but of ${elsewhere}`
      : sayReading(findings, v, claim, reading, e);
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
      .filter(({ p }) => p >= WORTH_NAMING)
      .slice(0, 3)
      .map(({ reading, p }) => ({ reading, explanation: say(reading), p: round(p) })),
    slip,
    span: spanOf(claim),
  };
}

/** The likeliest way of being wrong before that of being right. */
function wrongFirst(chances: readonly Chance[]): readonly Chance[] {
  const wrong = chances.find(({ reading }) => reading !== 'right');
  return wrong ? [wrong, ...chances.filter((chance) => chance !== wrong)] : chances;
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

/** The event of which a claim holds that may concern several, where that is not the view's own. */
function heldElsewhere(
  { compiled: { problem }, weights, names }: Findings,
  v: number,
  claim: Claim,
): string | undefined {
  const mass = (u: number) => massWhere(weights[problem.viewEvent[u]!]!, claim);
  let best = v;
  for (let u = problem.viewRing[v]!; u !== v; u = problem.viewRing[u]!)
    if (mass(u) > mass(best)) best = u;
  return best === v || mass(v) >= 0.5 ? undefined : names[problem.viewEvent[best]!];
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

/** Least probability of a reading that is named. */
const WORTH_NAMING = 0.02;
/** Room for the probability of each reading of a claim. */
const sums = new Map<Reading, number>();

/** Readings of an on-sale claim that are worth naming, with their probability, likeliest first. */
function readingsOf(findings: Findings, v: number, claim: Claim, p_right: number): Chance[] {
  const { problem, statements } = findings.compiled;
  if (problem.viewRing[v] !== v && p_right >= 0.5) return [{ reading: 'right', p: p_right }];
  const main = statements[problem.viewStatement[v]!]!.values[0]!.spans;
  const own = claim.date!.ranges;
  const pen =
    main.length !== own.length || main[0]!.lo < own[0]!.first || main.at(-1)!.hi > own.at(-1)!.last;
  if (pen)
    return [{ reading: p_right >= 0.5 ? 'right' : 'pen', p: Math.max(p_right, 1 - p_right) }];
  sums.clear();
  const row = v * (N_READINGS + 1);
  for (const [r, name] of NAMES) {
    const p = findings.tally.readings[row + r]! / findings.tally.explained;
    sums.set(name, (sums.get(name) ?? 0) + p);
  }
  if (own.length > 1 || own[0]!.first !== own[0]!.last) foldLocal(sums, p_right);
  else {
    giveBack(sums, findings.weights[problem.viewEvent[v]!]!, own[0]!.first);
    reconcile(sums, p_right);
  }
  const most = Math.max(...sums.values());
  const chances: Chance[] = [];
  for (const [reading, p] of sums)
    if (p >= WORTH_NAMING || p === most) chances.push({ reading, p });
  return chances.sort((a, b) => b.p - a.p);
}

/** Readings that are no slip on some days, and then leave the day right. */
const LEAVES_RIGHT: readonly (readonly [Reading, (day: Civil, said: Civil) => boolean])[] = [
  [
    'swapped',
    (day, said) =>
      day.year === said.year && day.month === said.dayOfMonth && day.dayOfMonth === said.month,
  ],
  [
    'first-of-month',
    (day, said) => day.month === said.month && day.year === said.year && said.dayOfMonth === 1,
  ],
  [
    'year-off',
    (day, said) =>
      Math.abs(day.year - said.year) === 1 &&
      day.month === said.month &&
      Math.abs(day.dayOfMonth - said.dayOfMonth) <= 1,
  ],
];

/** Counts as right what such a reading has beyond the days on which it would be a slip. */
function giveBack(sums: Map<Reading, number>, { days, p }: DayWeights, value: number) {
  const said = civilOf(value);
  for (const [reading, slips] of LEAVES_RIGHT) {
    if ((sums.get(reading) ?? 0) < WORTH_NAMING) continue;
    let most = 0;
    days.forEach((day, j) => {
      if (day !== value && slips(civilOf(day), said)) most += p[j]!;
    });
    const beyond = Math.max(0, (sums.get(reading) ?? 0) - most);
    sums.set(reading, (sums.get(reading) ?? 0) - beyond);
    sums.set('right', (sums.get('right') ?? 0) + beyond);
  }
}

/** Readings under which a value of one day is not the day of release. */
const WRONG: readonly Reading[] = [
  'next-day',
  'few-days',
  'swapped',
  'first-of-month',
  'year-off',
  'other-moment',
  'cover-date',
  'noise',
];

/**
 * Brings readings, which are counted in some chains, in line with the days, which are averaged over
 * all: those that are wrong make up no more than `1 - p_right`, and "right" no more than `p_right`.
 */
function reconcile(sums: Map<Reading, number>, p_right: number) {
  const right = sums.get('right') ?? 0;
  let wrong = 0;
  for (const reading of WRONG) wrong += sums.get(reading) ?? 0;
  const moved = Math.max(0, wrong - (1 - p_right)) - (wrong > 0 ? Math.max(0, right - p_right) : 0);
  if (moved === 0) return;
  for (const reading of WRONG)
    sums.set(reading, ((sums.get(reading) ?? 0) * (wrong - moved)) / wrong);
  sums.set('right', right + moved);
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
