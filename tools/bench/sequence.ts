import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sequencePosterior } from '../../src/dating/index.ts';

/** Four events with windows, each after the one before: the first case of the fixture. */
const WINDOWS = [
  ['a', 0, 30],
  ['b', 10, 40],
  ['c', 15, 45],
  ['d', 20, 60],
] as const;
const MODEL = join(import.meta.dirname, '..', '..', 'checks', 'makers', 'sequence', 'model.bug');

/** Batches of each chain, from which the error of a mean is judged. */
const BATCHES = 50;

/** Mean day of each event, its standard error, and how long finding all took. */
export interface Sequenced {
  readonly means: readonly { readonly day: number; readonly error: number }[];
  readonly ms: number;
}

/** The case by the exact door, asked for the first time in this process. */
export function sequencedHere(): Sequenced {
  const events = WINDOWS.map(([, first, last]) => ({
    first,
    weights: new Array<number>(last - first + 1).fill(1),
  }));
  const orders = [1, 2, 3].map((later) => ({ earlier: later - 1, later, strict: true }));
  const began = performance.now();
  const { weights } = sequencePosterior(events, orders);
  const ms = performance.now() - began;
  const means = weights.map((all, e) => ({
    day: all.reduce((sum, p, j) => sum + (events[e]!.first + j) * p, 0),
    error: 0,
  }));
  return { means, ms };
}

/** The case sampled by JAGS, 4 chains of 50,000; `undefined` where JAGS is not installed. */
export function sequencedByJags(folder: string): Sequenced | undefined {
  mkdirSync(folder, { recursive: true });
  copyFileSync(MODEL, join(folder, 'model.bug'));
  writeFileSync(join(folder, 'data.R'), jagsData());
  const steps = ['update 2000', 'monitor day', 'update 50000', 'coda *', 'exit'];
  const begin = ['model in "model.bug"', 'data in "data.R"', 'compile, nchains(4)'];
  const starts = [1, 2, 3, 4].map((chain) => `parameters in "inits${chain}.R", chain(${chain})`);
  for (const chain of [1, 2, 3, 4]) {
    const text = `k <- c(6,11,16,21)\n.RNG.name <- "base::Mersenne-Twister"\n.RNG.seed <- ${chain}\n`;
    writeFileSync(join(folder, `inits${chain}.R`), text);
  }
  const commands = [...begin, ...starts, 'initialize', ...steps];
  writeFileSync(join(folder, 'run.cmd'), `${commands.join('\n')}\n`);
  const began = performance.now();
  const { error, status } = spawnSync('jags', ['run.cmd'], { cwd: folder });
  if (error) return undefined;
  if (status !== 0) throw new Error(`jags ended with ${status}`);
  return { ms: performance.now() - began, means: meansIn(folder) };
}

function jagsData(): string {
  const columns = Math.max(...WINDOWS.map(([, from, to]) => to - from + 1));
  const weights = Array.from({ length: columns }, (_, k) =>
    WINDOWS.map(([, from, to]) => (k <= to - from ? 1 : 0)),
  ).flat();
  return [
    `events <- 4\norders <- 3\nfirst <- c(${WINDOWS.map(([, from]) => from)})`,
    `w <- structure(c(${weights}), .Dim = c(4,${columns}))`,
    'earlier <- c(1,2,3)\nlater <- c(2,3,4)\nstrict <- c(1,1,1)\nok <- c(1,1,1)\n',
  ].join('\n');
}

function meansIn(folder: string): Sequenced['means'] {
  const chains = [1, 2, 3, 4].map((chain) =>
    readFileSync(join(folder, `CODAchain${chain}.txt`), 'utf8')
      .trim()
      .split('\n')
      .map((line) => Number(line.trim().split(/\s+/)[1])),
  );
  const draws = (chains[0]?.length ?? 0) / WINDOWS.length;
  const length = draws / BATCHES;
  return WINDOWS.map((_, event) => {
    const batches = chains.flatMap((chain) =>
      Array.from({ length: BATCHES }, (_, b) => {
        const from = event * draws + b * length;
        return meanOf(chain.slice(from, from + length));
      }),
    );
    const day = meanOf(batches);
    const squares = batches.reduce((sum, mean) => sum + (mean - day) ** 2, 0);
    return { day, error: Math.sqrt(squares / (batches.length * (batches.length - 1))) };
  });
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
