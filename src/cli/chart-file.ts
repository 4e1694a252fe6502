import { readFile } from 'node:fs/promises';
import type { Lab, Patch } from '../bench/index.ts';
import { reasonOf } from './dossier.ts';
import { WrongCall } from './wrong-call.ts';

/** A patch of a chart file; a reference is a colour that the measured one is compared with. */
export interface ChartPatch extends Patch {
  readonly reference: Lab | null;
}

/**
 * Reads a chart file, `{"patches": [{"lab", "centre_px", "size_px", "reference"}]}`. Throws
 * `WrongCall` with every patch that is not right.
 */
export async function chartIn(file: string): Promise<readonly ChartPatch[]> {
  const text = await readFile(file, 'utf8').catch((error: NodeJS.ErrnoException) => {
    throw new WrongCall(`${file} cannot be opened: ${reasonOf(error)}.`);
  });
  const patches = patchesOf(file, text);
  const faults = patches.flatMap((patch, i) =>
    faultsOf(patch).map((fault) => `patch ${i}: ${fault}`),
  );
  if (faults.length > 0) throw new WrongCall(`${file} is not a chart: ${faults.join('; ')}.`);
  return patches.map((patch) => {
    const { lab, centre_px, size_px, reference = null } = patch as Written;
    return { lab, centrePx: centre_px, sizePx: size_px, reference };
  });
}

interface Written {
  readonly lab: Lab | null;
  readonly centre_px: readonly [number, number];
  readonly size_px: number;
  readonly reference?: Lab | null;
}

function patchesOf(file: string, text: string): readonly unknown[] {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (error) {
    throw new WrongCall(`${file} is no JSON: ${(error as Error).message}.`);
  }
  const patches = (value as { patches?: unknown } | null)?.patches;
  if (!Array.isArray(patches) || patches.length === 0)
    throw new WrongCall(`${file} is not a chart: a list "patches" is expected.`);
  return patches;
}

function faultsOf(patch: unknown): readonly string[] {
  const { lab, centre_px, size_px, reference } = (patch ?? {}) as Record<string, unknown>;
  return [
    ...(lab === null || areNumbers(lab, 3) ? [] : ['"lab" is three numbers or null']),
    ...(reference == null || areNumbers(reference, 3) ? [] : ['"reference" is three numbers']),
    ...(areNumbers(centre_px, 2) ? [] : ['"centre_px" is two numbers']),
    ...(areNumbers([size_px], 1) && (size_px as number) >= 4
      ? []
      : ['"size_px" is a number of at least 4']),
  ];
}

function areNumbers(value: unknown, count: number): boolean {
  return Array.isArray(value) && value.length === count && value.every(Number.isFinite);
}
