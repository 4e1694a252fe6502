import { byField, type Told } from './fields.ts';
import {
  FIELDS,
  type Field,
  LEVEL,
  LEVELS,
  type Levels,
  type Numbers,
  yearLevel,
} from './levels.ts';

/** How a true pair's levels fall (agrees, near, silent, differs) before anything is learned. */
interface Prior {
  /** Where the value is nothing out of the ordinary. */
  readonly usual: readonly number[];
  readonly other: readonly number[];
}

/** Judgement, no source: wide, and overruled by some ten labels. */
const PRIOR: Readonly<Record<Field, Prior>> = {
  place: { usual: [0.25, 0.02, 0.7, 0.03], other: [0.75, 0.05, 0.17, 0.03] },
  product: { usual: [0.75, 0.12, 0.1, 0.03], other: [0.75, 0.12, 0.1, 0.03] },
  finish: { usual: [0.12, 0.02, 0.83, 0.03], other: [0.62, 0.05, 0.28, 0.05] },
  edition: { usual: [0.12, 0.02, 0.83, 0.03], other: [0.5, 0.08, 0.37, 0.05] },
  wave: { usual: [0.15, 0.02, 0.8, 0.03], other: [0.45, 0.05, 0.45, 0.05] },
  art: { usual: [0.1, 0.05, 0.8, 0.05], other: [0.15, 0.05, 0.75, 0.05] },
  called: { usual: [0.1, 0.1, 0.7, 0.1], other: [0.15, 0.1, 0.68, 0.07] },
  number: { usual: [0.15, 0.02, 0.75, 0.08], other: [0.82, 0.06, 0.09, 0.03] },
  year: { usual: [0.74, 0.13, 0.08, 0.05], other: [0.74, 0.13, 0.08, 0.05] },
};

/** Labels' worth of the prior, and of a field's habit against that of one value. */
const OF_PRIOR = 8;
const OF_FIELD = 3;

/** How often labels of printings with a value agreed, were near, silent, or differed. */
export interface Habits {
  readonly fields: Readonly<Record<Field, readonly [Float64Array, Float64Array]>>;
  readonly values: Readonly<Record<Field, Float64Array>>;
}

/** Of each field, which value a printing has (-1: not known) and whether that is usual. */
export interface Columns {
  readonly of: Readonly<Record<Field, Int32Array>>;
  readonly usual: Readonly<Record<Field, readonly boolean[]>>;
  /** Printings with each value. */
  readonly counts: Readonly<Record<Field, Int32Array>>;
}

/** The printings' values as columns of indices, words, numbers and years alike. */
export function columnsOf(told: Told, numbers: Numbers): Columns {
  const known = Int32Array.from(told.years, ({ release }) => (release === undefined ? -1 : 0));
  const of = { ...told.of, number: numbers.of, year: known };
  const usualOf = (field: Field): readonly boolean[] => {
    if (field === 'number') return numbers.list.map((number) => number === '');
    if (field === 'year') return [false];
    return told.values[field].map(({ usual }) => usual);
  };
  const usual = byField(FIELDS, usualOf);
  const counts = byField(FIELDS, (field) => {
    const count = new Int32Array(usual[field].length);
    for (const value of of[field]) if (value >= 0) count[value] = (count[value] as number) + 1;
    return count;
  });
  return { of, usual, counts };
}

/** Habits before anything is learned. */
export function noHabits(columns: Columns): Habits {
  return {
    fields: byField(FIELDS, () => [new Float64Array(LEVELS), new Float64Array(LEVELS)] as const),
    values: byField(FIELDS, (field) => new Float64Array(LEVELS * columns.usual[field].length)),
  };
}

/** The level of a printing's value of one field under a label. */
export function levelOf(
  field: Field,
  printing: number,
  levels: Levels,
  columns: Columns,
  told: Told,
): number {
  if (field === 'year')
    return yearLevel(levels.year, told.years[printing] as Told['years'][number]);
  const value = columns.of[field][printing] as number;
  return field === 'number'
    ? (levels.number[value] as number)
    : (levels.words[field][value] as number);
}

/** Adds a pair that holds with some probability to the habits. */
export function addHabit(
  habits: Habits,
  columns: Columns,
  told: Told,
  levels: Levels,
  printing: number,
  p: number,
): void {
  for (const field of FIELDS) {
    const value = columns.of[field][printing] as number;
    if (value < 0) continue;
    const level = levelOf(field, printing, levels, columns, told);
    const usual = columns.usual[field][value] ? 0 : 1;
    const ofField = habits.fields[field][usual];
    ofField[level] = (ofField[level] as number) + p;
    const place = LEVELS * value + level;
    habits.values[field][place] = (habits.values[field][place] as number) + p;
  }
}

/** The chance of a level where the pair is true, what the pair itself taught left out. */
function chanceOf(
  field: Field,
  value: number,
  level: number,
  own: number,
  habits: Habits,
  usual: boolean,
): number {
  const prior = PRIOR[field][usual ? 'usual' : 'other'];
  const ofField = habits.fields[field][usual ? 0 : 1];
  let seen = -own;
  for (const count of ofField) seen += count;
  const shared =
    ((prior[level] as number) * OF_PRIOR + (ofField[level] as number) - own) /
    (OF_PRIOR + Math.max(0, seen));
  const counts = habits.values[field];
  let ofValue = -own;
  for (let i = 0; i < LEVELS; i++) ofValue += counts[LEVELS * value + i] as number;
  const here = (counts[LEVELS * value + level] as number) - own;
  return Math.max(
    1e-4,
    (shared * OF_FIELD + Math.max(0, here)) / (OF_FIELD + Math.max(0, ofValue)),
  );
}

/** How the values of a dossier's printings fall among the levels under one label. */
export function unmatched(levels: Levels, columns: Columns, told: Told): Record<Field, number[]> {
  const shares = (field: Field): number[] => {
    const counts = [0.2, 0.1, 0.35, 0.35];
    let all = 1;
    if (field === 'year') {
      const step = Math.max(1, Math.floor(told.years.length / 500));
      for (let i = 0; i < told.years.length; i += step) {
        if ((columns.of.year[i] as number) < 0) continue;
        const level = yearLevel(levels.year, told.years[i] as Told['years'][number]);
        counts[level] = (counts[level] as number) + 1;
        all += 1;
      }
    } else {
      const levelsHere = field === 'number' ? levels.number : levels.words[field];
      columns.counts[field].forEach((count, value) => {
        const level = levelsHere[value] as number;
        counts[level] = (counts[level] as number) + count;
        all += count;
      });
    }
    return counts.map((count) => count / all);
  };
  return byField(FIELDS, shares);
}

/** How often labels are silent of each field, over the printings of a dossier. */
export function silences(columns: Columns, habits: Habits): Record<Field, number> {
  return byField(FIELDS, (field) => {
    let silent = 0;
    let known = 0;
    columns.counts[field].forEach((count, value) => {
      const usual = columns.usual[field][value] as boolean;
      silent += count * chanceOf(field, value, LEVEL.silent, 0, habits, usual);
      known += count;
    });
    return known > 0 ? silent / known : 0.5;
  });
}

/**
 * The weight of a pair of label and printing, as the natural log of a likelihood ratio (
 * `fellegi:1969`): over the fields, log of the chance of the level for a true pair over that for a
 * printing taken at random, under a label that tells the field as often as labels do. Fields whose
 * value is not known say nothing.
 *
 * @param own how much the pair itself taught the habits, 0 to 1
 */
export function weightOf(
  printing: number,
  levels: Levels,
  ifNot: Record<Field, number[]>,
  columns: Columns,
  told: Told,
  habits: Habits,
  silence: Readonly<Record<Field, number>>,
  own: number,
): number {
  let weight = 0;
  for (const field of FIELDS) {
    const value = columns.of[field][printing] as number;
    if (value < 0) continue;
    const level = levelOf(field, printing, levels, columns, told);
    const usual = columns.usual[field][value] as boolean;
    const chance = chanceOf(field, value, level, own, habits, usual);
    const said = level === LEVEL.silent ? silence[field] : 1 - silence[field];
    weight += Math.log(chance / (said * ((ifNot[field] as number[])[level] as number)));
  }
  return weight;
}
