import type { Comparison } from '../../bench/index.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';

/** A comparison in words, with a table of what was compared, the strongest first. */
export function comparisonReport(found: Comparison, width: number): string {
  const prose = (sentences: readonly string[]) =>
    sentences.flatMap((sentence) => [...wrapped(sentence, width), '']).join('\n');
  if (found.findings.length === 0) return `${prose([found.words])}`;
  const table = tableOf(
    [
      { head: 'compared' },
      { head: 'difference', align: 'right' },
      { head: '±', align: 'right' },
      { head: 'log10 of the ratio', align: 'right' },
      { head: 'where, mm' },
    ],
    found.findings.map(({ what, difference, sd, log10Lr, whereMm }) => [
      what,
      difference.toFixed(3),
      sd.toFixed(3),
      `${log10Lr > 0 ? '+' : ''}${log10Lr.toFixed(2)}`,
      whereMm ? whereMm.map((mm) => mm.toFixed(0)).join(', ') : '',
    ]),
    width,
  );
  const scale = `Above 0 speaks for “${found.between[0]}”, below 0 for “${found.between[1]}”. Together: ${found.log10Lr.toFixed(2)}.`;
  return `${prose([found.words])}\n${table}\n${prose([scale, ...found.cautions])}`;
}
