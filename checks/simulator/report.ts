import type { Bin, Score } from './figures.ts';
import { type Figure, figure, pooledBins, pooledDerivations } from './pool.ts';

const COLUMNS = [
  'engine',
  'exact %',
  'log score',
  'covered %',
  'claimed %',
  'p_best %',
  'not one',
  'accuracy held',
  'derived right',
  'found',
  'ms',
] as const;
const WIDTHS = [9, 13, 15, 12, 12, 12, 8, 14, 14, 8, 12];

const line = (cells: readonly string[]) =>
  cells.map((cell, i) => cell.padStart(WIDTHS[i]!)).join(' ');
const percent = ({ mean, se }: Figure) => `${(100 * mean).toFixed(1)} ± ${(100 * se).toFixed(1)}`;
const plain = ({ mean, se }: Figure) => `${mean.toFixed(3)} ± ${se.toFixed(3)}`;
const share = (part: number, whole: number) =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(0)} % of ${whole}`;
const ratio = (value: number) => (Number.isFinite(value) ? `${(100 * value).toFixed(0)} %` : '–');

/** The titles of the columns of `row`. */
export function header(): string {
  return line(COLUMNS);
}

/** Figures of one engine over many dossiers, means with standard errors between dossiers. */
export function row(
  name: string,
  scores: readonly Score[],
  times: readonly number[],
  bins: boolean,
): string {
  const of = (pick: (score: Score) => number) => figure(scores.map(pick));
  const sum = (pick: (score: Score) => number) =>
    scores.reduce((total, one) => total + pick(one), 0);
  const derived = pooledDerivations(scores);
  const cells = [
    name,
    percent(of((s) => s.exact)),
    plain(of((s) => s.log)),
    percent(of((s) => s.covered)),
    percent(of((s) => s.claimed)),
    percent(of((s) => s.p_best)),
    String(sum((s) => s.not_one)),
    share(
      sum((s) => s.accuracy.held),
      sum((s) => s.accuracy.stated),
    ),
    derived.named === 0 ? '–' : `${ratio(derived.precision)} of ${derived.named}`,
    ratio(derived.recall),
    `${figure(times).mean.toFixed(0)} (${Math.max(...times).toFixed(0)})`,
  ];
  if (!bins) return line(cells);
  const tables = [
    ['p_best', pooledBins(scores.map((s) => s.bins))],
    ['p_right', pooledBins(scores.map((s) => s.right))],
    ['derives', derived.bins],
  ] as const;
  return [line(cells), ...tables.flatMap(([title, list]) => binLines(title, list))].join('\n');
}

/** A line a bin: what was stated, what came true, of how many. */
function binLines(title: string, bins: readonly Bin[]): string[] {
  return bins
    .filter((bin) => bin.count > 0)
    .map(
      ({ stated, came, count }) =>
        `  ${title} ${stated.toFixed(3)} came ${came.toFixed(3)} of ${count}`,
    );
}
