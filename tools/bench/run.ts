import { execFileSync } from 'node:child_process';
import { join } from 'node:path';

export const ROOT = join(import.meta.dirname, '..', '..');

/** Runs a script of the checkout with Node, and answers what it printed. */
export function node(words: readonly string[]): string {
  const most = 2 ** 30;
  return execFileSync(process.execPath, [...words], {
    cwd: ROOT,
    encoding: 'utf8',
    maxBuffer: most,
  });
}

/** How long a script of the checkout takes, in milliseconds, best of `times`. */
export function timed(words: readonly string[], times: number): number {
  const each = Array.from({ length: times }, () => {
    const began = performance.now();
    node(words);
    return performance.now() - began;
  });
  return Math.min(...each);
}
