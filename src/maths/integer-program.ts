import loader from 'highs';

/** The package's types describe it as CommonJS; what Node and bundlers import is the loader itself. */
const load = loader as unknown as (typeof loader)['default'];

/** Kept once it is there, since starting it takes longer than most programs do. */
let loaded: ReturnType<typeof load> | undefined;

/** A sum of variables with their factors. */
export type Terms = readonly (readonly [variable: number, factor: number])[];

/** A program in variables that are 0 or 1. */
export interface BinaryProgram {
  readonly variables: number;
  /** To be made as great as can be. */
  readonly gain: Terms;
  /** Sums that stay at or under a limit. */
  readonly limits: readonly { readonly sum: Terms; readonly most: number }[];
}

/** The best choice found. */
export interface BinarySolution {
  /** For each variable whether it is 1. */
  readonly chosen: readonly boolean[];
  readonly gain: number;
  /** No choice gains more than this; equal to `gain` where the choice is proven best. */
  readonly bound: number;
}

/**
 * The best choice of variables that are 0 or 1, by branch and cut (HiGHS, `huangfu:2018`).
 *
 * @throws {RangeError} where a factor is no number, or no choice keeps within the limits
 */
export async function chooseBest(program: BinaryProgram): Promise<BinarySolution> {
  if (
    program.gain.every(([, factor]) => factor <= 0) &&
    program.limits.every(({ most }) => most >= 0)
  )
    return { chosen: Array.from({ length: program.variables }, () => false), gain: 0, bound: 0 };
  loaded ??= load();
  const highs = await loaded;
  const solved = highs.solve(written(program), { mip_rel_gap: 0, mip_abs_gap: 1e-7 });
  if (solved.Status !== 'Optimal')
    throw new RangeError(`no choice keeps within the limits: ${solved.Status}`);
  const columns = solved.Columns as Readonly<Record<string, { readonly Primal: number }>>;
  const chosen = Array.from(
    { length: program.variables },
    (_, i) => (columns[`x${i}`]?.Primal ?? 0) > 0.5,
  );
  const gain = program.gain.reduce((sum, [i, factor]) => sum + (chosen[i] ? factor : 0), 0);
  return { chosen, gain, bound: Math.max(gain, solved.ObjectiveValue) };
}

/** The program in the LP format. */
function written({ variables, gain, limits }: BinaryProgram): string {
  const sum = (terms: Terms) =>
    terms
      .map(([i, factor]) => {
        if (!Number.isFinite(factor)) throw new RangeError(`the factor of ${i} is ${factor}`);
        return `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} x${i}`;
      })
      .join('\n ');
  return [
    'Maximize',
    ` obj: ${sum(gain)}`,
    'Subject To',
    ...limits.map((limit, i) => ` c${i}: ${sum(limit.sum)} <= ${limit.most}`),
    'Binary',
    ...Array.from({ length: variables }, (_, i) => ` x${i}`),
    'End',
  ].join('\n');
}
