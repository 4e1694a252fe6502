import type { Evidence } from '../../evidence/index.ts';
import type { Compiled } from '../compile.ts';
import { FIXED_HISTS } from '../histograms.ts';
import { placeOf } from '../tables.ts';

/** Names of what is numbered anew in each layout, so that a part finds what the whole has learned. */
export interface Names {
  /** Of each rate cell: source, era and market. */
  readonly rates: readonly string[];
  /** Of the market of each rate cell. */
  readonly markets: readonly string[];
  /** Of each run: source, property and product. */
  readonly runs: readonly string[];
  /** Of the histograms of periodicals, by number; the fixed ones have none. */
  readonly series: readonly string[];
}

/** Names what a layout numbers. */
export function namesOf(
  { problem, statements, releases, survey }: Compiled,
  { products }: Pick<Evidence, 'products'>,
): Names {
  const rates: string[] = new Array(problem.nRates);
  const markets: string[] = new Array(problem.nRates);
  const series: string[] = new Array(problem.nHists).fill('');
  const seriesOf = new Map(products.map((p) => [p.id, p.series ?? '']));
  for (let v = 0; v < problem.nViews; v++) {
    const e = problem.viewEvent[v]!;
    const { market, product } = releases.events[e]!;
    const c = problem.viewRate[v]!;
    if (c >= 0 && rates[c] === undefined) {
      rates[c] = `${problem.viewSource[v]} ${survey.eras[e]} ${market}`;
      markets[c] = market;
    }
    const h = problem.viewHist[v]!;
    if (h >= FIXED_HISTS) series[h] ||= seriesOf.get(product) ?? '';
  }
  const runs = Array.from({ length: problem.nRuns }, (_, r) => {
    const v = problem.runViews[problem.runStart[r]!]!;
    const statement = statements[problem.viewStatement[v]!]!;
    const place = placeOf(statement, releases.events[problem.viewEvent[v]!]!);
    return `${problem.runSource[r]} ${place}`;
  });
  return { rates, markets, runs, series };
}

/** Numbers by name. */
export function numbersOf(names: readonly string[]): Map<string, number> {
  return new Map(names.map((name, i) => [name, i]));
}
