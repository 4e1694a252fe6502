import {
  type ChartAnswer,
  type ChartFound,
  chartColours,
  differenceFrom,
  findChart,
  type Measured,
  type Patch,
  type Picture,
} from '../../bench/index.ts';
import { type ChartFile, type ChartPatch, chartIn } from '../chart-file.ts';
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
  const { patches, covered, grid } = placedIn(picture, chart);
  const found = chartColours(picture, patches, covered);
  const measure = performance.now() - began;
  if ('why' in found) {
    const each = found.leftOut.map(({ patch, why }) => `\npatch ${patch}: ${why}`);
    throw new WrongCall(found.why + each.join(''));
  }
  const ms = { decode, measure };
  if (json) await writeJson({ ...answerOf(found, chart.patches), ...gridOf(grid), ms }, terminal);
  else await terminal.write(colourReport(found, chart.patches, grid, terminal.width));
  return 0;
}

interface Placed {
  readonly patches: readonly Patch[];
  readonly covered: readonly number[];
  /** Null where every patch had its place. */
  readonly grid: ChartFound | null;
}

/** Where each patch of a chart lies, those without a place found in the picture. */
function placedIn(picture: Picture, { patches, columns, sizeMm }: ChartFile): Placed {
  const sought = patches.flatMap(({ placed }, k) => (placed ? [] : [k]));
  if (columns === null) return { patches: patches.map(withPlace), covered: [], grid: null };
  const labs = sought.map((k) => patches[k]?.lab ?? null);
  const grid = findChart(picture, { columns, labs, sizeMm });
  if ('why' in grid) throw new WrongCall(grid.why);
  const places = new Map(sought.map((k, i) => [k, grid.patches[i] as Patch]));
  return {
    patches: patches.map((patch, k) => places.get(k) ?? withPlace(patch)),
    covered: grid.covered.map((i) => sought[i] as number),
    grid,
  };
}

function withPlace({ lab, placed }: ChartPatch): Patch {
  return { lab, ...(placed as NonNullable<typeof placed>) };
}

function gridOf(grid: ChartFound | null): object {
  if (!grid) return {};
  const { outline, residualPx, p, patches, pxPerMm } = grid;
  const centres = patches.map((one) => one.centrePx);
  return {
    chart: { outline, p, residual_px: residualPx, px_per_mm: pxPerMm, centres_px: centres },
  };
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
