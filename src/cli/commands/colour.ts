import {
  type ChartAnswer,
  chartColours,
  differenceFrom,
  type Measured,
} from '../../bench/index.ts';
import { type ChartPatch, chartIn } from '../chart-file.ts';
import { writeJson } from '../json.ts';
import { pictureIn } from '../picture.ts';
import { colourReport } from '../report/colour.ts';
import type { Terminal } from '../terminal.ts';
import { WrongCall } from '../wrong-call.ts';

/** Corrects a picture by its chart and measures the other patches; too few usable ones are a wrong call. */
export async function colour(
  file: string,
  { chart: chartFile, json = false }: { chart: string; json?: boolean },
  terminal: Terminal,
): Promise<0> {
  const chart = await chartIn(chartFile);
  const { picture, decode } = await pictureIn(file);
  const began = performance.now();
  const found = chartColours(picture, chart);
  const measure = performance.now() - began;
  if ('why' in found) {
    const each = found.leftOut.map(({ patch, why }) => `\npatch ${patch}: ${why}`);
    throw new WrongCall(found.why + each.join(''));
  }
  if (json) await writeJson({ ...answerOf(found, chart), ms: { decode, measure } }, terminal);
  else await terminal.write(colourReport(found, chart, terminal.width));
  return 0;
}

function answerOf({ patches, fit, leftOut }: ChartAnswer, chart: readonly ChartPatch[]): object {
  return {
    patches: patches.map((one, i) => (one ? patchOf(one, chart[i]) : { lab: null, sd: null })),
    fit: { mean_dE00: fit.mean, max_dE00: fit.max },
    left_out: leftOut,
  };
}

function patchOf(measured: Measured, patch: ChartPatch | undefined): object {
  if (!patch?.reference) return measured;
  const { dE00, sd, byChance } = differenceFrom(measured, patch.reference);
  return { ...measured, difference: { dE00, sd, by_chance: byChance } };
}
