import type { DatedPrinting, Dating } from '../../src/dating/index.ts';
import { dayOf, type Evidence } from '../../src/evidence/index.ts';

/** The day number of `YYYY-MM-DD`. */
export function dayNumber(iso: string): number {
  const [year, month, day] = iso.split('-').map(Number);
  return dayOf(year!, month!, day!);
}

/** Sums of some thousand numbers: rounding alone. */
const ROUNDING = 1e-9;

/** All that breaks a promise of the answer's shape, in words; nothing where it is sound. */
export function unsound(dating: Dating, evidence: Evidence): string[] {
  const ids = evidence.printings.map((p) => p.id);
  return [
    ...numbersIn(dating, ''),
    ...dating.printings.flatMap((one, i) => [
      ...(one.id === ids[i] ? [] : [`printing ${i} is ${one.id}`]),
      ...daysOf(one).map((text) => `${one.id}: ${text}`),
    ]),
    ...(sameSet(dating.order, ids) ? [] : [`order ${dating.order.join()}`]),
    ...dating.first
      .filter(({ p }) => p > 1 + ROUNDING || p < 0)
      .map(({ id, p }) => `${id} first with ${p}`),
    ...dating.sequences.flatMap(({ earlier, later, p, p_same_day }) =>
      p >= 0 && p_same_day >= 0 && p + p_same_day <= 1 + ROUNDING
        ? []
        : [`${earlier} before ${later}: ${p} and ${p_same_day}`],
    ),
    ...dating.sources.flatMap(({ id, derives }) =>
      derives.reduce((sum, { p }) => sum + p, 0) <= 1 + ROUNDING ? [] : [`${id} derives too much`],
    ),
    ...missingClaims(dating, evidence),
  ];
}

function sameSet(some: readonly string[], others: readonly string[]): boolean {
  return [...some].sort().join() === [...others].sort().join();
}

/** Numbers that are none. */
function numbersIn(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => numbersIn(part, `${path}.${key}`));
}

/** `days` hold 0.999 to 1 and ascend, and the other fields are what `days` says. */
function daysOf({ best, p_best, interval95, p_interval, days, state, claims }: DatedPrinting) {
  if (best === null) return days.length === 0 && interval95 === null ? [] : ['null, but has days'];
  const numbers = days.map(([day]) => dayNumber(day));
  const sum = days.reduce((all, [, p]) => all + p, 0);
  const inside = days
    .filter((_, j) => between(numbers[j]!, interval95!.map(dayNumber)))
    .reduce((all, [, p]) => all + p, 0);
  const problems: [boolean, string][] = [
    [sum < 0.999 - ROUNDING || sum > 1 + ROUNDING, `days sum to ${sum}`],
    [numbers.some((day, j) => j > 0 && day <= numbers[j - 1]!), 'days do not ascend'],
    [days.some(([, p]) => !(p > 0)), 'a day without probability'],
    [days.find(([day]) => day === best)?.[1] !== p_best, 'p_best is not its entry'],
    [days.some(([, p]) => p > p_best), 'a day is likelier than the best'],
    [p_interval < 0.95 || p_interval > 1, `p_interval ${p_interval}`],
    // The days left out hold 0.001 at most, wherever they lie.
    [inside > p_interval + ROUNDING || inside < p_interval - 0.001 - ROUNDING, `holds ${inside}`],
    [shorterRun(numbers, days, interval95!), 'a shorter run holds 0.95'],
    [state === 'day' && p_best < 0.5, 'a day below one half'],
    [claims.some(({ p_right: p }) => p < 0 || p > 1), 'p_right outside 0 to 1'],
  ];
  return problems.filter(([bad]) => bad).map(([, text]) => text);
}

function between(day: number, [from, to]: readonly number[]): boolean {
  return from! <= day && day <= to!;
}

/** A run of days shorter than the interval holds as much; judged where it does so by `days` alone. */
function shorterRun(
  numbers: readonly number[],
  days: DatedPrinting['days'],
  interval: readonly [string, string],
): boolean {
  const length = dayNumber(interval[1]) - dayNumber(interval[0]);
  let held = 0;
  for (let from = 0, to = 0; to < days.length; to++) {
    held += days[to]![1];
    while (numbers[to]! - numbers[from]! >= length) held -= days[from++]![1];
    if (held > 0.95 + ROUNDING) return true;
  }
  return false;
}

/** Dated claims of a printing that its answer does not explain. */
function missingClaims({ printings }: Dating, evidence: Evidence): string[] {
  const explained = new Map(printings.map((p) => [p.id, new Set(p.claims.map((c) => c.row))]));
  return evidence.claims.flatMap(({ row, printings: about, date }) =>
    date?.ranges.some((r) => Number.isFinite(r.first) || Number.isFinite(r.last))
      ? about.filter((id) => !explained.get(id)!.has(row)).map((id) => `row ${row} not at ${id}`)
      : [],
  );
}
