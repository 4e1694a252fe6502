import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '..', '..');

/** Runs a script of the checkout with Node, and answers what it printed. Throws where it fails. */
export function node(words: readonly string[]): string {
  const how = { cwd: ROOT, encoding: 'utf8', maxBuffer: 2 ** 30 } as const;
  const { status, stdout, stderr } = spawnSync(process.execPath, [...words], how);
  if (status === 0) return stdout;
  throw new Error(/^\w*Error: .*$/m.exec(stderr)?.[0] ?? `ended with ${status}`);
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
