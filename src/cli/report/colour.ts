import { differenceFrom, type Measured } from '../../bench/index.ts';
import { sayDoubt } from '../../evidence/index.ts';
import type { ChartColours } from '../chart-colours.ts';
import type { ChartPatch } from '../chart-file.ts';
import { type Row, tableOf } from './table.ts';
import { wrapped } from './width.ts';
import { percent } from './words.ts';

/** How well the chart fits, what was left out, and a table of the patches that were measured. */
export function colourReport(
  { found: { patches, fit, leftOut }, patches: chart, grid }: ChartColours,
  width: number,
): string {
  const lines = [
    ...(grid
      ? [
          `The chart was found, sure to ${percent(grid.p)}; its patches lie within ${grid.residualPx.toFixed(1)} pixels of an even grid.`,
        ]
      : []),
    `Each known patch, predicted by the others alone, is off by ${fit.mean.toFixed(2)} on average and by ${fit.max.toFixed(2)} at most (CIEDE2000).`,
    ...leftOut.map(({ patch, why }) => `Patch ${patch} was left out: ${why}.`),
    ...(leftOut.length > 0
      ? ['For better figures photograph the chart again, uncovered, evenly lit and not too bright.']
      : []),
  ];
  const words = lines.flatMap((line) => wrapped(line, width)).map((line) => `${line}\n`);
  const rows = patches.flatMap((one, i): Row[] => {
    const patch = chart[i] as ChartPatch;
    return one && (patch.lab === null || patch.reference) ? [rowOf(i, one, patch)] : [];
  });
  if (rows.length === 0) return words.join('');
  const heads = ['L*', '± L*', 'a*', '± a*', 'b*', '± b*', 'difference', 'by chance'];
  const columns = ['patch', ...heads].map((head) => ({ head, align: 'right' as const }));
  return `${words.join('')}\n${tableOf(columns, rows, width)}`;
}

function rowOf(i: number, measured: Measured, { reference }: ChartPatch): readonly string[] {
  const { lab, sd } = measured;
  const found = reference && differenceFrom(measured, reference);
  return [
    String(i),
    ...([0, 1, 2] as const).flatMap((k) => [lab[k].toFixed(2), sayDoubt(sd[k], 2)]),
    found ? `${found.dE00.toFixed(2)} ± ${sayDoubt(found.sd, 2)}` : '',
    found ? found.byChance.toFixed(2) : '',
  ];
}
