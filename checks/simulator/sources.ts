import { civilOf, dayOf, type SourceKind } from '../../src/evidence/index.ts';
import type { Chance } from './chance.ts';
import type { Temper } from './tempers.ts';
import { type Habits, MISTAKES, type Mistake } from './types.ts';
import type { World } from './world.ts';

type Weights = Partial<Record<Mistake, number>>;

/** How common each kind is, how accurate against the dossier's average (logit), what it errs in. */
const KINDS: readonly (readonly [SourceKind, number, number, number, Weights])[] = [
  ['publisher-database', 1.2, 0.6, 0.9, { 'next-day': 2, 'filled-in': 2.5, 'other-moment': 2 }],
  ['packaging', 0.3, 0.2, 0.5, { 'other-moment': 4 }],
  ['magazine', 1.5, 0.2, 0.7, { 'other-moment': 1.5, 'few-days': 1.5 }],
  ['book', 1, 0.2, 0.7, { 'first-of-month': 2, sibling: 1.5 }],
  ['press-release', 0.9, 0.4, 0.85, { 'other-moment': 3, 'few-days': 1.5 }],
  ['advertisement', 0.8, -0.1, 0.7, { 'few-days': 2, 'other-moment': 2 }],
  ['newspaper', 0.6, 0.3, 0.85, { 'next-day': 2.5 }],
  ['store-listing', 1.3, 0, 0.9, { 'few-days': 3, 'first-of-month': 2, sibling: 1.5 }],
  ['checklist', 2.2, -0.1, 0.8, { 'row-shift': 3, 'filled-in': 2.5, sibling: 2 }],
  ['forum', 1.6, -0.5, 0.7, { 'noise-near': 2, swapped: 2, 'year-off': 2 }],
  ['video', 0.6, -0.6, 0.7, { 'noise-near': 2, 'noise-far': 2 }],
  ['archive-snapshot', 0.7, 0.3, 0.9, { 'few-days': 2, 'next-day': 2 }],
  ['correspondence', 0.4, 0.1, 0.5, { 'other-moment': 2 }],
  ['registration-record', 0.4, 0.3, 0.95, { 'other-moment': 6 }],
  ['own-observation', 0.4, 0.5, 0.9, { 'few-days': 4 }],
  ['auction-record', 0.4, -0.4, 0.6, { 'noise-far': 2, 'year-off': 2 }],
  ['other', 0.7, -0.2, 0.7, {}],
];

const COMMON: Readonly<Record<Mistake, number>> = {
  'next-day': 0.1,
  'few-days': 0.14,
  swapped: 0.05,
  'first-of-month': 0.13,
  'year-off': 0.05,
  'other-moment': 0.12,
  'row-shift': 0.05,
  'filled-in': 0.06,
  sibling: 0.15,
  'noise-near': 0.08,
  'noise-far': 0.05,
};

/** What one dossier's sources have in common. */
interface Level {
  readonly wrong: number;
  readonly spread: number;
  readonly abroad: number;
  readonly drift: number;
  readonly habits: readonly number[];
  readonly lagged: number;
  readonly exact: number;
  readonly pen: number;
}

function levelOf(chance: Chance, temper: Temper): Level {
  return {
    wrong: chance.within(temper.wrong),
    spread: chance.between(0.4, 1.3),
    abroad: chance.between(0, 1.4),
    drift: chance.between(0, 1),
    habits: MISTAKES.map((m) => COMMON[m] * Math.exp(chance.normal(0, 0.7))),
    lagged: chance.within(temper.lagged),
    exact: chance.within(temper.exact),
    pen: chance.between(0.002, 0.04),
  };
}

/** A day count with a heavy tail, mostly one or two weeks. */
function lagOf(chance: Chance): number {
  const size = chance.pick([1, 2, 3, 4, 5, 7, 7, 7, 10, 14, 14, 21, 28, chance.whole(8, 90)]);
  return chance.yes(0.65) ? -size : size;
}

/** The sources of one dossier, each with rates of its own drawn around the dossier's. */
export function makeSources(chance: Chance, world: World, count: number, temper: Temper): Habits[] {
  const level = levelOf(chance, temper);
  return Array.from({ length: count }, (_, i) => sourceOf(chance, world, level, i + 1));
}

function sourceOf(chance: Chance, world: World, level: Level, number: number): Habits {
  const row = KINDS[chance.weighted(KINDS.map(([, share]) => share))]!;
  const [kind, , better, exact, weights] = row;
  const raw = MISTAKES.map(
    (m, i) => level.habits[i]! * (weights[m] ?? 1) * (0.05 + chance.gamma(0.7)),
  );
  const total = raw.reduce((sum, w) => sum + w, 0);
  const lagged = chance.yes(level.lagged * (weights['other-moment'] ? 1.6 : 0.8));
  const published = chance.between(world.last, world.last + 4000);
  const day =
    1 / (1 + Math.exp(-(Math.log(exact / (1 - exact)) + level.exact + chance.normal(0, 1))));
  return {
    id: `s${String(number).padStart(2, '0')}`,
    kind,
    home: chance.yes(0.5) ? world.markets[0]! : chance.pick(world.markets),
    accuracy: Math.log(1 / level.wrong - 1) + better + chance.normal(0, level.spread),
    abroad: level.abroad * chance.between(0.3, 1.5),
    drift: chance.normal(0, level.drift),
    mistakes: raw.map((w) => w / total),
    lag: lagOf(chance),
    spread: chance.yes(0.7) ? 0 : chance.between(0.5, 5),
    lagShare: lagged ? chance.between(0.25, 0.97) : 0,
    fill: fillOf(chance, world),
    pen: level.pen * (0.2 + 2 * chance.beta(1, 2)),
    precision: precisionOf(chance, day),
    approximate: chance.yes(0.4) ? chance.between(0, 0.3) : 0.01,
    uncertain: chance.yes(0.3) ? chance.between(0, 0.15) : 0.005,
    published: Math.round(published),
  };
}

/** The day that a source writes where it knows none: a first of a month or year, or any day. */
function fillOf(chance: Chance, world: World): number {
  const { year, month } = civilOf(Math.round(chance.between(world.first, world.last)));
  const shape = chance.weighted([2, 1, 2]);
  return dayOf(year, shape === 1 ? 1 : month, shape === 2 ? chance.whole(1, 28) : 1);
}

function precisionOf(chance: Chance, day: number): number[] {
  const xx = chance.yes(0.25) ? chance.between(0.1, 0.9) : 0;
  const month = (1 - day) * chance.between(0.5, 0.95);
  const rest = 1 - day - month;
  const interval = chance.yes(0.3) ? rest * 0.5 : 0;
  return [day, month * (1 - xx), month * xx, rest - interval, interval];
}
