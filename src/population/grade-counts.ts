import type { Evidence } from '../evidence/index.ts';
import { toldOf } from './labels/fields.ts';
import { partOf, readsOf } from './reads.ts';
import type { GradeCount, Records } from './types.ts';

/**
 * The copies of each printing by grade, and by entry that is no grade, in each service's newest report up to a day: labels as
 * they are matched, a lump in the shares that its printings are estimated to have.
 *
 * @param on a day number
 */
export function gradeCountsOf(records: Records, evidence: Evidence, on: number): GradeCount[] {
  const told = toldOf(evidence);
  const seen = records.seen.filter(({ day }) => day <= on);
  const reads = readsOf(records, told, seen, on);
  return reads.flatMap((read) => {
    const { newest, service } = read.series;
    return read.homes.flatMap((labels, printing) =>
      labels.flatMap((label) => {
        const { share } = partOf(read, reads, label, printing);
        const from = label * newest.columns;
        return [...service.grades, ...service.offScale].map((grade, at): GradeCount => {
          const count = share * (newest.counts[from + at] as number);
          return { service: service.id, printing: told.ids[printing] as string, grade, count };
        });
      }),
    );
  });
}
