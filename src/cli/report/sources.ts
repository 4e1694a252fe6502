import type { DatedSource } from '../../dating/index.ts';
import type { Called } from './called.ts';
import { tableOf } from './table.ts';
import { percent } from './words.ts';

const WORTH_SAYING = { derivation: 0.25, habit: 0.1 };

/** Sources with how often they are right, whom they take from, and their habits. */
export function sourcesReport(
  sources: readonly DatedSource[],
  called: Called,
  width: number,
): string {
  const columns = [
    { head: 'source' },
    { head: 'claims', align: 'right' },
    { head: 'right', align: 'right' },
    { head: '95 %' },
    { head: 'taken from, habits' },
  ] as const;
  const rows = sources.map((source) => [
    called.source(source.id),
    String(source.claims),
    source.accuracy === null ? '' : percent(source.accuracy),
    source.accuracy95 === null
      ? ''
      : source.accuracy95.map((end) => Math.round(end * 100)).join('–'),
    [...derivations(source, called), ...habits(source)].join('; '),
  ]);
  return tableOf(columns, rows, width);
}

function derivations({ derives }: DatedSource, called: Called): readonly string[] {
  return derives
    .filter(({ p }) => p >= WORTH_SAYING.derivation)
    .map(({ from, p }) => `taken from ${called.source(from)} ${percent(p)}`);
}

function habits({ habits: all }: DatedSource): readonly string[] {
  return all
    .filter(({ reading, share }) => reading !== 'copied' && share >= WORTH_SAYING.habit)
    .slice(0, 2)
    .map(({ words, share }) => `${words} ${percent(share)}`);
}
