import { sharesAmong } from '../bench/index.ts';
import { type Day, isoOf } from '../evidence/index.ts';
import type { GradeChances, PricedService } from '../market/index.ts';
import type { GradeCount } from '../population/index.ts';
import { newestCounts } from './newest-counts.ts';
import type { Dossier } from './types.ts';

/** The chances of a copy's grades at each service, by its id and what it may be. */
export type ToGradeChances = (
  copy: string,
  printings: readonly { readonly id: string; readonly p: number }[],
) => GradeChances[];

/**
 * The chances of grades: those of the copy's examination at the service that it names, else the
 * population's shares for its printing, drawn towards those of the service's other printings. The
 * population is of copies that were sent in, so its shares flatter.
 */
export function gradeChancesIn(
  dossier: Dossier,
  services: readonly PricedService[],
  on: Day,
): ToGradeChances {
  const counted = newestCounts(dossier, isoOf(on));
  const shares = new Map(services.map((one) => [one.id, populationShares(counted, one)]));
  const without = new Map(
    services.flatMap((one) => {
      const share = ungradedShare(counted, one);
      return share === null ? [] : [[one.id, share] as const];
    }),
  );
  return (copy, printings) =>
    services.flatMap((service): GradeChances[] => {
      const examined = examinedGrade(dossier, copy, service);
      const ungraded = without.get(service.id) ?? null;
      if (examined !== undefined)
        return [{ service: service.id, p: examined, ungraded, by: 'examination' }];
      const of = shares.get(service.id);
      if (of === undefined || printings.length === 0) return [];
      const mixed = service.grades.map((grade, g) => [
        grade,
        printings.reduce((sum, { id, p }) => sum + p * (of(id)[g] as number), 0),
      ]);
      return [{ service: service.id, p: Object.fromEntries(mixed), ungraded, by: 'population' }];
    });
}

/** Shares of grades by printing; undefined where the service has no count at all. */
function populationShares(
  counted: readonly GradeCount[],
  { id, grades }: PricedService,
): ((printing: string) => readonly number[]) | undefined {
  const counts = new Map<string, number[]>();
  for (const { service, printing, grade, count } of counted) {
    const at = grades.indexOf(grade);
    if (service !== id || at < 0) continue;
    const own = counts.get(printing) ?? grades.map(() => 0);
    own[at] = (own[at] as number) + count;
    counts.set(printing, own);
  }
  if (counts.size === 0) return undefined;
  const shares = sharesAmong([...counts.values()], grades.length);
  const none = grades.map(() => 0);
  return (printing) => shares(counts.get(printing) ?? none);
}

/**
 * The share of a service's entries that are no grade, all printings together, since they are few; null
 * where it counts none. The mean under Jeffreys' prior (`brown:2001`).
 */
function ungradedShare(
  counted: readonly GradeCount[],
  { id, grades }: PricedService,
): number | null {
  let none = 0;
  let all = 0;
  for (const { service, grade, count } of counted) {
    if (service !== id) continue;
    all += count;
    if (!grades.includes(grade)) none += count;
  }
  return none === 0 ? null : (none + 0.5) / (all + 1);
}

/** The grade of a copy's examination, where it is of this service; shares add up to 1. */
function examinedGrade(
  { documents }: Dossier,
  copy: string,
  { id, grades }: PricedService,
): Readonly<Record<string, number>> | undefined {
  const kept = documents.get(`desk/examinations/${copy}.json`);
  if (typeof kept !== 'object' || kept === null || !('grade' in kept)) return undefined;
  const grade = kept.grade;
  if (typeof grade !== 'object' || grade === null || !('p' in grade)) return undefined;
  if ('scale' in grade && typeof grade.scale === 'string' && grade.scale !== id) return undefined;
  const entries = Object.entries(grade.p as object).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number' && entry[1] >= 0,
  );
  const sum = entries.reduce((total, [, p]) => total + p, 0);
  if (sum <= 0 || entries.some(([name]) => !grades.includes(name))) return undefined;
  return Object.fromEntries(entries.map(([name, p]) => [name, p / sum]));
}
