import type { Told } from '../press/index.ts';
import type { Terminal } from './terminal.ts';

const PATIENCE_MS = 1000;
const PAUSE_MS = 200;

/** Tells how far a long piece of work has come, where somebody watches and it lasts over a second. */
export interface Progress {
  /** `share` from 0 to 1. */
  report(share: number): void;
  /** Wipes the line. */
  end(): void;
}

/** Progress on standard error, one line that is written over. */
export function progressOn(
  terminal: Terminal,
  what: string,
  now: () => number = () => performance.now(),
): Progress {
  const began = now();
  let last = Number.NEGATIVE_INFINITY;
  return {
    report(share) {
      const time = now();
      if (!terminal.watched || time - began < PATIENCE_MS || time - last < PAUSE_MS) return;
      last = time;
      terminal.say(`\r${what} … ${String(Math.floor(share * 100)).padStart(3)} %`);
    },
    end() {
      if (last > Number.NEGATIVE_INFINITY) terminal.say(`\r${' '.repeat(what.length + 8)}\r`);
    },
  };
}

/** Tells the steps of a piece of work as they begin, one line that is written over, where somebody watches. */
export function stepsOn(terminal: Terminal): {
  /** What begins now, and the share that is done, 0 to 1. */
  say(what: string, share: number): void;
  /** Wipes the line. */
  end(): void;
} {
  let longest = 0;
  return {
    say(what, share) {
      if (!terminal.watched) return;
      const line = `${String(Math.floor(share * 100)).padStart(3)} %  ${what} …`;
      longest = Math.max(longest, line.length);
      terminal.say(`\r${line.padEnd(longest)}`);
    },
    end() {
      if (longest > 0) terminal.say(`\r${' '.repeat(longest)}\r`);
    },
  };
}

/** Tells the steps of a piece of work, and what it leaves out, a line each. */
export function toldOn(terminal: Terminal): Told & { end(): void } {
  const steps = stepsOn(terminal);
  return {
    begins: steps.say,
    leaves(sentence) {
      steps.end();
      terminal.say(`${sentence}\n`);
    },
    end: steps.end,
  };
}
