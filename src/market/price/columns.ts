import type { PricedService } from './types.ts';

/** The columns of a table of prices: raw first, then the grades of each service, worst first. */
export interface Columns {
  readonly count: number;
  /** For each service the first column, how many it has, and how far each is from the top grade. */
  readonly services: readonly ServiceColumns[];
  /** The column of a grade; 0 for raw; undefined for a grade that the service does not have. */
  of(service: string | null, grade: string | null): number | undefined;
  readonly names: readonly { readonly service: string | null; readonly grade: string | null }[];
}

/** Where the grades of a service stand. */
export interface ServiceColumns {
  readonly first: number;
  readonly count: number;
  /** Steps to the first top grade, 0 for top grades, by grade. */
  readonly belowTop: readonly number[];
}

/** The columns of services in order. */
export function columnsOf(services: readonly PricedService[]): Columns {
  const names: { service: string | null; grade: string | null }[] = [
    { service: null, grade: null },
  ];
  const at = new Map<string, number>();
  const ranges = services.map(({ id, grades, top }): ServiceColumns => {
    const first = names.length;
    const topAt = grades.includes(top) ? grades.indexOf(top) : grades.length - 1;
    for (const grade of grades) {
      at.set(JSON.stringify([id, grade]), names.length);
      names.push({ service: id, grade });
    }
    const belowTop = grades.map((_, i) => Math.max(0, topAt - i));
    return { first, count: grades.length, belowTop };
  });
  return {
    count: names.length,
    services: ranges,
    names,
    of: (service, grade) => (service === null ? 0 : at.get(JSON.stringify([service, grade]))),
  };
}
