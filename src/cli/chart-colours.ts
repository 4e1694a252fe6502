import {
  type ChartAnswer,
  type ChartFound,
  type Correction,
  chartColours,
  correctionBy,
  differenceFrom,
  findChart,
  type Measured,
  type Patch,
  type Picture,
} from '../bench/index.ts';
import type { ChartFile, ChartPatch } from './chart-file.ts';
import { WrongCall } from './wrong-call.ts';

/** What a picture's chart told, and the grid that was found; null where every patch had its place. */
export interface ChartColours {
  readonly found: ChartAnswer;
  readonly patches: readonly ChartPatch[];
  readonly grid: ChartFound | null;
}

/** Corrects a picture by its chart and measures the other patches. Throws `WrongCall` where too few can be used. */
export function coloursBy(picture: Picture, chart: ChartFile): ChartColours {
  const { patches, covered, grid } = placedIn(picture, chart);
  const found = chartColours(picture, patches, covered);
  if ('why' in found) {
    const each = [...new Set(found.leftOut.map(({ why }) => why))].map((why) => {
      const alike = found.leftOut.filter((one) => one.why === why).map(({ patch }) => patch);
      return `\n${alike.length === 1 ? 'patch' : 'patches'} ${alike.join(', ')}: ${why}`;
    });
    throw new WrongCall(found.why + each.join(''));
  }
  return { found, patches: chart.patches, grid };
}

/** What a chart that lies beside a card corrects its picture by, or why it does not. */
export function correctionIn(picture: Picture, chart: ChartFile): Correction | { why: string } {
  const found = placedOrWhy(picture, chart);
  return 'why' in found ? found : correctionBy(picture, found.patches, found.covered);
}

/** The colours as the commands print them. */
export function coloursJson({ found, patches: chart, grid }: ChartColours): object {
  const { patches, fit, leftOut } = found;
  return {
    patches: patches.map((one, i) => (one ? patchOf(one, chart[i]) : { lab: null, sd: null })),
    fit: { mean_dE00: fit.mean, max_dE00: fit.max },
    left_out: leftOut,
    ...gridOf(grid),
  };
}

interface Placed {
  readonly patches: readonly Patch[];
  readonly covered: readonly number[];
  readonly grid: ChartFound | null;
}

/** Where each patch of a chart lies, those without a place found in the picture. */
function placedIn(picture: Picture, chart: ChartFile): Placed {
  const placed = placedOrWhy(picture, chart);
  if ('why' in placed) throw new WrongCall(placed.why);
  return placed;
}

function placedOrWhy(
  picture: Picture,
  { patches, columns, sizeMm }: ChartFile,
): Placed | { readonly why: string } {
  const sought = patches.flatMap(({ placed }, k) => (placed ? [] : [k]));
  if (columns === null) return { patches: patches.map(withPlace), covered: [], grid: null };
  const labs = sought.map((k) => patches[k]?.lab ?? null);
  const grid = findChart(picture, { columns, labs, sizeMm });
  if ('why' in grid) return grid;
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

function patchOf(measured: Measured, patch: ChartPatch | undefined): object {
  if (!patch?.reference) return measured;
  const { dE00, sd, byChance } = differenceFrom(measured, patch.reference);
  return { ...measured, difference: { dE00, sd, by_chance: byChance } };
}
