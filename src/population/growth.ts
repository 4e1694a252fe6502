import { isoOf } from '../evidence/index.ts';
import { type Series, tallyOf } from './newest.ts';
import type { Fall, Growth, Report, Service } from './types.ts';

/** Falls listed; a report in disorder has thousands. */
const LISTED = 500;

/** How each label of the newest report grew since the report before it. */
export function growthOf({ service, reports, newest }: Series): Growth[] {
  const before = reports.at(-2);
  if (before === undefined) return [];
  const at = placesOf(before);
  const years = (newest.day - before.day) / 365.25;
  return newest.labels.map((label, place) => {
    const there = at(label, place);
    const was = there < 0 ? 0 : tallyOf(before, service, there).total;
    const is = tallyOf(newest, service, place).total;
    return {
      service: service.id,
      label,
      from: before.asOf,
      to: newest.asOf,
      before: was,
      after: is,
      per_year: years > 0 ? (is - was) / years : null,
    };
  });
}

/** Where a label stands in a report, -1 where it does not; most stand where they stood. */
function placesOf(report: Report): (label: string, hint: number) => number {
  let index: Map<string, number> | undefined;
  return (label, hint) => {
    if (report.labels[hint] === label) return hint;
    index ??= new Map(report.labels.map((one, at) => [one, at]));
    return index.get(label) ?? -1;
  };
}

/**
 * Every count that fell from one report to the next, with what may lie behind it. Graded copies do
 * not become fewer by grading: a fall is a return, a regrade, a relabelling or a correction.
 */
export function fallsOf({ service, reports }: Series): Fall[] {
  const falls: Fall[] = [];
  for (let i = 1; i < reports.length && falls.length < LISTED; i++)
    between(service, reports[i - 1] as Report, reports[i] as Report, falls);
  return falls.slice(0, LISTED);
}

function between(service: Service, before: Report, after: Report, falls: Fall[]): void {
  const at = placesOf(after);
  const newcomers = () => newLabels(before, after, service);
  const grades = [...service.grades, ...service.offScale];
  before.labels.forEach((label, place) => {
    const there = at(label, place);
    if (there < 0) {
      const was = tallyOf(before, service, place).total;
      if (was > 0) falls.push(gone(service, before, after, label, was, newcomers()));
      return;
    }
    const [from, to] = [place * before.columns, there * after.columns];
    let fell = 0;
    let rose = 0;
    const found: number[] = [];
    for (let grade = 0; grade < before.columns; grade++) {
      const change = (after.counts[to + grade] as number) - (before.counts[from + grade] as number);
      if (change > 0) rose += change;
      else if (change < 0) {
        fell -= change;
        found.push(grade);
      }
    }
    for (const grade of found)
      falls.push({
        service: service.id,
        label,
        grade: grades[grade] as string,
        from: before.asOf,
        to: after.asOf,
        before: before.counts[from + grade] as number,
        after: after.counts[to + grade] as number,
        explanation: whyFell(fell, rose),
      });
  });
}

function whyFell(fell: number, rose: number): string {
  if (rose >= fell) return 'other grades rose as much: copies graded anew, or a grade put right';
  return 'no other grade rose as much: copies returned to the service, counted elsewhere, or a correction';
}

function newLabels(
  before: Report,
  after: Report,
  service: Service,
): { label: string; total: number }[] {
  const there = new Set(before.labels);
  return after.labels.flatMap((label, at) =>
    there.has(label) ? [] : { label, total: tallyOf(after, service, at).total },
  );
}

function gone(
  service: Service,
  before: Report,
  after: Report,
  label: string,
  was: number,
  newcomers: readonly { label: string; total: number }[],
): Fall {
  const heir = newcomers.find(({ total }) => total >= 0.9 * was && total <= 1.5 * was + 5);
  const explanation =
    heir === undefined
      ? 'the label is not in the later report: left out of it, or counted under another'
      : `the label is not in the later report, “${heir.label}” is new there with ${heir.total}: relabelled, it seems`;
  const [from, to] = [before.asOf, after.asOf];
  return { service: service.id, label, grade: null, from, to, before: was, after: 0, explanation };
}

/** A day as the answers write it. */
export function dayText(day: number): string | null {
  return Number.isFinite(day) ? isoOf(day) : null;
}
