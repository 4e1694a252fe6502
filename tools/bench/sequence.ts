import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { measured } from './sizes.ts';

/** Four events with windows, each after the one before: the first case of the fixture. */
const WINDOWS = [
  ['a', 0, 30],
  ['b', 10, 40],
  ['c', 15, 45],
  ['d', 20, 60],
] as const;
const FIRST_DAY = Date.UTC(1996, 0, 1);
const DAY_MS = 86_400_000;
const MODEL = join(import.meta.dirname, '..', '..', 'checks', 'makers', 'sequence', 'model.bug');

/** Mean day of each event, counted from the first, and how long finding it took. */
export interface Sequenced {
  readonly means: readonly number[];
  readonly ms: number;
}

/** The case as a dossier, dated by the project. */
export function sequencedHere(folder: string): Sequenced {
  const iso = (day: number) => new Date(FIRST_DAY + day * DAY_MS).toISOString().slice(0, 10);
  const put = (file: string, lines: readonly string[]) =>
    writeFileSync(join(folder, file), `${lines.join('\n')}\n`);
  mkdirSync(folder, { recursive: true });
  put('printings.csv', ['id,market', ...WINDOWS.map(([id]) => `${id},${id}`)]);
  put('sources.csv', ['id,kind', 'seen,own-observation']);
  const claims = WINDOWS.flatMap(([id, from, to]) => [
    `${id},seen,not-before,${iso(from)}`,
    `${id},seen,seen-by,${iso(to)}`,
  ]);
  put('claims.csv', ['printing,source,property,value', ...claims]);
  put('orders.csv', ['earlier,later,reason', 'a,b,stated', 'b,c,stated', 'c,d,stated']);
  const { dateMs, means } = measured(folder, { printings: 4, claims: 8, effort: 'refined' });
  return { means: means.map((day) => day - FIRST_DAY / DAY_MS), ms: dateMs };
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

function meansIn(folder: string): readonly number[] {
  const chains = [1, 2, 3, 4].map((chain) =>
    readFileSync(join(folder, `CODAchain${chain}.txt`), 'utf8')
      .trim()
      .split('\n')
      .map((line) => Number(line.trim().split(/\s+/)[1])),
  );
  const draws = (chains[0]?.length ?? 0) / WINDOWS.length;
  return WINDOWS.map((_, event) => {
    const days = chains.flatMap((chain) => chain.slice(event * draws, (event + 1) * draws));
    return days.reduce((sum, day) => sum + day, 0) / days.length;
  });
}
