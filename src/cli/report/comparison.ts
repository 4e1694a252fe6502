import type { Comparison, MarkAgainst, Sign } from '../../bench/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import { fixed } from './numbers.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';

/** A comparison, what points to an alteration, and which bright marks the references show too. */
export interface Compared extends Comparison {
  readonly signs: readonly Sign[];
  readonly marks: readonly MarkAgainst[];
}

/** A comparison in words, with a table of what was compared, the strongest first. */
export function comparisonReport(found: Compared, width: number): string {
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
      fixed(difference, 3),
      sayDoubt(sd, 3),
      `${log10Lr > 0 ? '+' : ''}${fixed(log10Lr, 2)}`,
      whereMm ? whereMm.map((mm) => mm.toFixed(0)).join(', ') : '',
    ]),
    width,
  );
  const scale = `Above 0 speaks for “${found.between[0]}”, below 0 for “${found.between[1]}”. Together: ${found.log10Lr.toFixed(2)}.`;
  const signs = found.signs.map(({ words, cautions }) => `${words} ${cautions.join(' ')}`);
  const more = [scale, ...found.cautions, ...signs, ...marksWords(found.marks)];
  return `${prose([found.words])}\n${table}\n${prose(more)}`;
}

/** Which bright marks are print, as a reference shows them too, and which are the copy's own. */
function marksWords(marks: readonly MarkAgainst[]): readonly string[] {
  const places = (some: readonly MarkAgainst[]) =>
    some.map(({ mark: { centreMm } }) => centreMm.map((mm) => mm.toFixed(1)).join(', ')).join('; ');
  const own = marks.filter(({ mark }) => mark.p >= 0.5);
  const print = marks.filter(({ mark, alone }) => mark.p < 0.5 && alone >= 0.1);
  return [
    ...(own.length > 0
      ? [`Bright marks that no reference shows, mm from left and top: ${places(own)}.`]
      : []),
    ...(print.length > 0
      ? [`Bright spots that a reference shows too, so that they are print: ${places(print)}.`]
      : []),
  ];
}
