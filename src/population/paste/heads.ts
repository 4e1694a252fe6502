import { levelled } from '../labels/words.ts';
import type { Service } from '../types.ts';

/** What a column of a pasted report holds. */
export type Role = { readonly is: 'grade'; readonly grade: string } | { readonly is: Other };
type Other = 'label' | 'total' | 'grade-name' | 'count' | 'not-used';

const TOTAL = /^(total|totals|sum|all|pop|population|graded|gesamt|suma|yhteensa|합계|합)$/;
const LABEL = /label|card|name|description|title|item|variety|카드|이름|라벨|kortti|karta|carta/;
const GRADE = /^(grade|grades|note|nota|arvosana|ocena|등급)$/;
const COUNT = /^(count|qty|quantity|number|no|copies|pop|population|n|수량|매수|maara|liczba)$/;

/** The row that heads the columns, and what each of them holds. */
export interface Heads {
  readonly row: number;
  readonly roles: readonly Role[];
}

/** Finds the heads: two grades of the service or more, or a column of grades beside one of counts. */
export function headsOf(
  rows: readonly { readonly cells: readonly string[] }[],
  service: Service,
): Heads | undefined {
  for (let row = 0; row < Math.min(rows.length, 12); row++) {
    const cells = (rows[row] as { cells: readonly string[] }).cells;
    const roles = cells.map((cell) => roleOf(cell, service));
    const grades = roles.filter(({ is }) => is === 'grade').length;
    if (grades >= Math.max(1, Math.min(2, service.grades.length)))
      return { row, roles: labelled(roles, cells) };
    const names = cells.map((cell) => levelled(cell).trim());
    const gradeAt = names.findIndex((name) => GRADE.test(name));
    const countAt = names.findIndex((name, at) => at !== gradeAt && COUNT.test(name));
    if (gradeAt >= 0 && countAt >= 0)
      return { row, roles: labelled(longRoles(names, gradeAt, countAt), cells) };
  }
  return undefined;
}

function longRoles(names: readonly string[], gradeAt: number, countAt: number): Role[] {
  return names.map((_, at): Role => {
    if (at === gradeAt) return { is: 'grade-name' };
    return { is: at === countAt ? 'count' : 'not-used' };
  });
}

/** A head that is a grade of the service, with a word or a sign beside it at most. */
function roleOf(cell: string, service: Service): Role {
  const grade = gradeIn(cell, service);
  if (grade !== undefined) return { is: 'grade', grade };
  return { is: TOTAL.test(levelled(cell).trim()) ? 'total' : 'not-used' };
}

/** The grade of a service that a cell names: by itself, or with words such as “grade” around it. */
export function gradeIn(cell: string, service: Service): string | undefined {
  const all = [...service.grades, ...service.offScale];
  const whole = cell.trim();
  const same = all.find((grade) => levelled(grade) === levelled(whole));
  if (same !== undefined) return same;
  const found = all.filter((grade) => whole.split(/[\s:()]+/).some((part) => part === grade));
  return found.length === 1 && whole.length <= 24 ? found[0] : undefined;
}

/** The labels' columns: those with a head that says so, else all before the first figures. */
function labelled(roles: readonly Role[], cells: readonly string[]): Role[] {
  const named = roles.map(
    ({ is }, at) => is === 'not-used' && LABEL.test(levelled(cells[at] as string)),
  );
  const first = roles.findIndex(({ is }) => is !== 'not-used');
  return roles.map((role, at): Role => {
    const isLabel = named.includes(true) ? named[at] : role.is === 'not-used' && at < first;
    return isLabel ? { is: 'label' } : role;
  });
}
