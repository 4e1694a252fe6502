import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';

const PRINTLORE = join(import.meta.dirname, '..', '..', 'bin', 'printlore.js');

/** How a process ended, and what it wrote. */
export interface Ended {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** Starts the command as a user would. */
export function started(
  words: readonly string[],
  env: NodeJS.ProcessEnv = {},
): ChildProcessWithoutNullStreams {
  return spawn(process.execPath, [PRINTLORE, ...words], { env: { ...process.env, ...env } });
}

/** Waits until a process has ended. */
export async function ended(child: ChildProcessWithoutNullStreams): Promise<Ended> {
  const said = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    said.out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    said.err += text;
  });
  const [exit] = await once(child, 'close');
  return { exit, ...said };
}

/** Waits until a process has written a line that fits, and answers the line. */
export async function lineOf(
  child: ChildProcessWithoutNullStreams,
  pattern: RegExp,
): Promise<string> {
  let text = '';
  for await (const piece of child.stdout) {
    text += piece;
    const line = text.split('\n').find((one) => pattern.test(one));
    if (line !== undefined) return line;
  }
  throw new Error(`ended without a line that fits ${pattern}: ${text}`);
}
