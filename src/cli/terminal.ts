import { once } from 'node:events';

/** Where a command writes. */
export interface Terminal {
  /** Columns that a line may take. */
  readonly width: number;
  /** Standard error is a screen that a person looks at. */
  readonly watched: boolean;
  /** Writes to standard output, and waits while the reader is slow. */
  write(text: string): Promise<void>;
  /** Writes to standard error. */
  say(text: string): void;
}

/**
 * The terminal of this process. A reader that goes away, as `head` does, ends the process quietly.
 */
export function ownTerminal(): Terminal {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0);
    throw error;
  });
  return {
    width: Math.max(60, Math.min(100, process.stdout.columns ?? 100)),
    watched: process.stderr.isTTY === true,
    async write(text) {
      if (!process.stdout.write(text)) await once(process.stdout, 'drain');
    },
    say: (text) => void process.stderr.write(text),
  };
}
