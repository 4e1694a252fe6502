import { type Compared, type Described, UNITS } from '../../bench/index.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { percent } from './words.ts';

const FIRST: readonly Compared['says'][] = ['disagrees', 'open', 'agrees'];

/**
 * The seller's condition words beside what was measured, what disagrees first, and what the pictures
 * could not show of them.
 */
export function describedReport({ compared, unseen, silent }: Described, width: number): string {
  const shown = compared.filter(
    ({ says, side, measure }) =>
      says !== 'open' || !unseen.some((one) => one.side === side && one.measure === measure),
  );
  shown.sort((a, b) => FIRST.indexOf(a.says) - FIRST.indexOf(b.says));
  const table = tableOf(
    [
      { head: 'words' },
      { head: 'of' },
      { head: 'allow' },
      { head: 'measured' },
      { head: 'more than that', align: 'right' },
      { head: 'so' },
    ],
    shown.map(({ words, side, measure, atMost, found, pMore, says }) => [
      words,
      `${side}, ${measure}`,
      `${atMost} ${UNITS[measure]}`,
      found.mean.toFixed(1),
      percent(pMore),
      says,
    ]),
    width,
  );
  const places = unseen.map(({ side, measure }) => `${measure} (${side})`).join(', ');
  const words = [
    ...(silent
      ? ['No condition word was found in the listing, so that nothing was promised.']
      : []),
    ...(places ? [`Promised, but not to be seen in these pictures: ${places}.`] : []),
  ];
  const prose = words.flatMap((one) => wrapped(one, width)).map((line) => `${line}\n`);
  return [shown.length > 0 ? table : '', prose.join('')].filter(Boolean).join('\n');
}
