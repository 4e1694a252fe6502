import { cpSync, mkdtempSync } from 'node:fs';
import { join } from 'node:path';
import { node } from './run.ts';

/** A simulated dossier and the longest that dating it may take. */
export interface Size {
  readonly printings: number;
  readonly claims: number;
  readonly effort: 'first' | 'refined';
  /** Milliseconds from disk on the build machine, where the project has set itself any. */
  readonly aim?: number;
}

export const USUAL: readonly Size[] = [
  { printings: 12, claims: 80, effort: 'first' },
  { printings: 12, claims: 80, effort: 'refined' },
  { printings: 60, claims: 500, effort: 'first', aim: 300 },
  { printings: 60, claims: 500, effort: 'refined', aim: 2000 },
  { printings: 5000, claims: 60_000, effort: 'first' },
  { printings: 5000, claims: 60_000, effort: 'refined', aim: 4000 },
];
export const LARGE: Size = { printings: 50_000, claims: 600_000, effort: 'refined' };

/** What one dossier took. */
export interface Measured {
  readonly printings: number;
  readonly claims: number;
  readonly faults: number;
  readonly readMs: number;
  readonly dateMs: number;
  /** From the start of the process. */
  readonly fromDiskMs: number;
  readonly peakMb: number;
  readonly monteCarloError: number;
}

/** Writes the simulated dossier of a size below a folder, and answers where. */
export function written({ printings, claims }: Size, folder: string): string {
  const path = join(folder, `${printings}`);
  const words = ['--write', path, '--printings', `${printings}`, '--claims', `${claims}`];
  node(['node_modules/tsx/dist/cli.mjs', 'checks/simulator/run.ts', ...words]);
  return path;
}

/** What dating anew took after each of some changes of one claim. */
export interface Redated {
  readonly changes: number;
  /** Changes that the whole had to be dated for. */
  readonly declined: number;
  readonly medianMs: number;
}

/** Longest that dating anew after a change of one claim may take, in milliseconds. */
export const REDATE_AIM = 50;

/** Dates a dossier on disk in a process of its own, and then anew after changes of single claims. */
export function redated(path: string): Redated {
  return JSON.parse(node(['tools/bench/redate.js', path])) as Redated;
}

/** How long changes of single claims waited for their first answer in the open workbench. */
export interface Edited {
  readonly changes: number;
  readonly medianMs: number;
  readonly mostMs: number;
}

/**
 * Changes claims of a copy of a dossier through the server in a process of its own, each as soon as
 * the one before it is answered, so that the refined dating is at work meanwhile.
 *
 * @param below folder in which the copy is made
 */
export function edited(path: string, below: string): Edited {
  const at = mkdtempSync(join(below, 'edited-'));
  cpSync(path, join(at, 'dossier'), { recursive: true });
  const words = [join(at, 'dossier'), join(at, 'data')];
  return JSON.parse(node(['tools/bench/edit.js', ...words])) as Edited;
}

/** Dates a dossier on disk in a process of its own. */
export function measured(path: string, { effort }: Size): Measured {
  return JSON.parse(node(['tools/bench/measure.js', path, effort])) as Measured;
}
