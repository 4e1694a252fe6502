import type { PrintProcess } from '../../bench/index.ts';
import { tableOf } from './table.ts';
import { wrapped } from './width.ts';

const PROCESS = {
  halftone: 'Halftone: the inks are printed in dots on screens.',
  stochastic: 'Stochastic: scattered dots without a direction, and no screen.',
  continuous: 'Continuous tone: no dots that this scan could show.',
} as const;

/** The print process in words, with a table of the screens, strongest first. */
export function screenReport(found: PrintProcess, width: number): string {
  const [low, high] = found.range.map(Math.round);
  const lines = [
    PROCESS[found.process],
    ...(found.rosette === null ? [] : [rosetteWords(found.rosette)]),
    `Rulings from ${low} to ${high} lines an inch were looked for. Angles run counter-clockwise from the picture’s x axis; a screen is the same after a quarter turn.`,
  ];
  const words = lines.flatMap((line) => wrapped(line, width)).map((line) => `${line}\n`);
  if (found.screens.length === 0) return words.join('');
  return `${words.join('')}\n${tableOf(
    [
      { head: 'ink' },
      { head: 'lines an inch', align: 'right' },
      { head: 'angle', align: 'right' },
      { head: 'strength', align: 'right' },
    ],
    found.screens.map(({ ink, lpi, angleDeg, strength }) => [
      ink,
      lpi.toFixed(1),
      `${angleDeg.toFixed(1)}°`,
      strength.toFixed(3),
    ]),
    width,
  )}`;
}

function rosetteWords(seen: boolean): string {
  return seen
    ? 'The rosette of screens that stand 30° apart is seen.'
    : 'No rosette stands out of the picture.';
}
