import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { node } from './run.ts';

/** What a publication took; milliseconds from the start of the process. */
export interface Took {
  readonly what: string;
  readonly ms: number;
  /** Of processor time, all threads together. */
  readonly cpuMs: number;
  readonly peakMb: number;
}

/** Longest that the demo's site and kit may take together, the first time and after one change. */
export const PUBLISH_AIM = { coldMs: 20_000, changedMs: 3000 };

/** A claim of the demo, and another day that it might have stated. */
const CHANGE = ['1994-10-07', '1994-10-08'] as const;

/**
 * Publishes the demo and makes its kit, as they are for the first time, as nothing changed, and once
 * one claim is changed.
 */
export function published(demo: string, folder: string): readonly Took[] {
  const dossier = join(folder, 'published');
  cpSync(demo, dossier, { recursive: true });
  const both = (when: string): readonly Took[] => [
    took(`site, ${when}`, ['publish', dossier, '--out', join(folder, 'site'), '--proof']),
    took(`film, ${when}`, ['film', dossier, '--out', join(folder, 'film')]),
  ];
  const before = [...both('first'), ...both('again')];
  changeClaim(join(dossier, 'claims.csv'));
  return [...before, ...both('one claim changed')];
}

function changeClaim(file: string): void {
  const [stated, other] = CHANGE;
  const text = readFileSync(file, 'utf8');
  const changed = text.replace(stated, other);
  if (changed === text) throw new Error(`no claim of the demo states ${stated}`);
  writeFileSync(file, changed);
}

function took(what: string, words: readonly string[]): Took {
  const last = node(['tools/bench/command.js', ...words])
    .trim()
    .split('\n')
    .at(-1);
  return { what, ...(JSON.parse(last ?? '') as Omit<Took, 'what'>) };
}
