import { type Selection, selected } from './selection.ts';
import { sharesOf } from './shares.ts';
import type { Limit, Scale } from './types.ts';
import { usualLimits } from './usual-limits.ts';

/** A row of a population report. */
export interface Counted {
  readonly service: string;
  readonly asOf: string;
  readonly label: string;
  readonly printing: string;
  readonly grade: string;
  readonly count: number;
}

/** What a grade of one copy by one service rests on. */
export interface Setting {
  readonly scale: Scale;
  readonly limits: readonly Limit[];
  readonly selection: Selection;
  /** Copies of the printing that the shares rest on, and of all printings of the service. */
  readonly copies: { readonly printing: number; readonly service: number };
}

/**
 * Scale, limits and prior shares for a copy of one of `printings` at a service: its newest report,
 * the printing's own counts drawn towards the service's, tilted by the owner's outcomes there.
 * @param outcomes grades that the owner's copies came back with from this service
 */
export function settingOf(
  scale: Scale,
  printings: readonly string[],
  population: readonly Counted[],
  outcomes: readonly string[],
  limits: readonly Limit[],
): Setting {
  const rows = rowsOf(scale, population);
  const own = scale.grades.map((_, g) =>
    rows.reduce(
      (sum, row) => (printings.includes(row.printing) ? sum + (row.counts[g] ?? 0) : sum),
      0,
    ),
  );
  const places = outcomes.map((grade) => scale.grades.indexOf(grade)).filter((g) => g >= 0);
  const all = rows.map(({ counts }) => counts);
  const total = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);
  return {
    scale,
    limits: limits.length > 0 ? limits : usualLimits(scale),
    selection: selected(sharesOf(own, all), places),
    copies: { printing: total(own), service: total(all.map(total)) },
  };
}

interface Row {
  readonly printing: string;
  readonly counts: readonly number[];
}

/** Counts by grade of every label in the service's newest report. */
function rowsOf({ service, grades }: Scale, population: readonly Counted[]): readonly Row[] {
  const own = population.filter((row) => row.service === service);
  const newest = own
    .map(({ asOf }) => asOf)
    .sort()
    .at(-1);
  const rows = new Map<string, { readonly printing: string; readonly counts: number[] }>();
  for (const { asOf, label, printing, grade, count } of own) {
    const g = grades.indexOf(grade);
    if (asOf !== newest || g < 0) continue;
    const key = `${printing}\n${label}`;
    const row = rows.get(key) ?? { printing, counts: grades.map(() => 0) };
    row.counts[g] = (row.counts[g] ?? 0) + count;
    rows.set(key, row);
  }
  return [...rows.values()];
}
