import { readFile } from 'node:fs/promises';
import type { Lab, Patch } from '../bench/index.ts';
import { reasonOf } from './dossier.ts';
import { WrongCall } from './wrong-call.ts';

/** A patch of a chart file; a reference is a colour that the measured one is compared with. */
export interface ChartPatch {
  readonly lab: Lab | null;
  /** Null where it must be found in the picture. */
  readonly placed: Pick<Patch, 'centrePx' | 'sizePx'> | null;
  readonly reference: Lab | null;
}

/** A chart file as read. */
export interface ChartFile {
  readonly patches: readonly ChartPatch[];
  /** Patches without a place are a grid of so many columns, in reading order; null where all have one. */
  readonly columns: number | null;
  /** Width and height of that grid; null where not told. */
  readonly sizeMm: readonly [number, number] | null;
}

/**
 * Reads a chart file, `{"patches": [{"lab", "centre_px", "size_px", "reference"}], "columns",
 * "size_mm"}`. Throws `WrongCall` with every patch that is not right.
 */
export async function chartIn(file: string): Promise<ChartFile> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  const { patches: written, columns, size_mm: size } = chartOf(file, text);
  const faults = written.flatMap((patch, i) =>
    faultsOf(patch).map((fault) => `patch ${i}: ${fault}`),
  );
  const patches = (written as readonly Written[]).map(
    ({ lab, centre_px: centrePx, size_px: sizePx, reference = null }): ChartPatch => ({
      lab,
      placed: centrePx && sizePx ? { centrePx, sizePx } : null,
      reference,
    }),
  );
  const sought = faults.length > 0 ? 0 : patches.filter(({ placed }) => !placed).length;
  faults.push(...gridFaults(sought, columns, size));
  if (faults.length > 0) throw new WrongCall(`${file} is not a chart: ${faults.join('; ')}.`);
  return {
    patches,
    columns: sought > 0 ? (columns as number) : null,
    sizeMm: (size ?? null) as ChartFile['sizeMm'],
  };
}

interface Written {
  readonly lab: Lab | null;
  readonly centre_px?: readonly [number, number] | null;
  readonly size_px?: number | null;
  readonly reference?: Lab | null;
}

interface WrittenChart {
  readonly patches: readonly unknown[];
  readonly columns?: unknown;
  readonly size_mm?: unknown;
}

function chartOf(file: string, text: string): WrittenChart {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw new WrongCall(`${file} is no JSON: ${(error as Error).message}.`);
  }
  const patches = (value as { patches?: unknown } | null)?.patches;
  if (!Array.isArray(patches) || patches.length === 0)
    throw new WrongCall(`${file} is not a chart: a list "patches" is expected.`);
  return value as WrittenChart;
}

function faultsOf(patch: unknown): readonly string[] {
  const { lab, centre_px, size_px, reference } = (patch ?? {}) as Record<string, unknown>;
  const colours = [
    ...(lab === null || areNumbers(lab, 3) ? [] : ['"lab" is three numbers or null']),
    ...(reference == null || areNumbers(reference, 3) ? [] : ['"reference" is three numbers']),
  ];
  if (centre_px == null && size_px == null) return colours;
  return [
    ...colours,
    ...(areNumbers(centre_px, 2) ? [] : ['"centre_px" is two numbers']),
    ...(areNumbers([size_px], 1) && (size_px as number) >= 4
      ? []
      : ['"size_px" is a number of at least 4']),
  ];
}

/** What is wrong with a grid of so many patches without a place. */
function gridFaults(sought: number, columns: unknown, size: unknown): readonly string[] {
  if (sought === 0) return [];
  const fits = Number.isInteger(columns) && (columns as number) >= 2;
  return [
    ...(fits && (columns as number) < sought
      ? []
      : [
          `${sought} patches have no "centre_px" and "size_px": "columns" then is the number of columns of their grid, at least 2, in at least two rows`,
        ]),
    ...(size == null || (areNumbers(size, 2) && (size as number[]).every((mm) => mm > 0))
      ? []
      : ['"size_mm" is the width and height of the grid']),
  ];
}

function areNumbers(value: unknown, count: number): boolean {
  return Array.isArray(value) && value.length === count && value.every(Number.isFinite);
}
