/**
 * Dates simulated dossiers and prints how well: see `docs/methods/simulation.md`.
 * `npx tsx checks/simulator/run.ts --engine all --printings 12 --difficulty hard --dossiers 40`
 */
import { parseArgs } from 'node:util';
import { ENGINES } from './engines.ts';
import type { Score } from './figures.ts';
import { header, row } from './report.ts';
import { score } from './score.ts';
import { simulate } from './simulate.ts';
import type { Difficulty, Simulated, Style } from './types.ts';
import { worstOf } from './worst.ts';
import { writeDossier } from './write.ts';

/** Claims of a dossier when nothing is said: 80 for 12 printings, 500 for 60, then 12 for each. */
function usualClaims(printings: number): number {
  if (values.style === 'sparse') return 2 * printings;
  return Math.round(printings * (printings <= 12 ? 80 / 12 : printings <= 100 ? 500 / 60 : 12));
}

const { values } = parseArgs({
  options: {
    engine: { type: 'string', default: 'all' },
    printings: { type: 'string', default: '12' },
    claims: { type: 'string' },
    sources: { type: 'string' },
    style: { type: 'string', default: 'cards' },
    difficulty: { type: 'string', default: 'medium' },
    dossiers: { type: 'string', default: '40' },
    seed: { type: 'string', default: '1' },
    worst: { type: 'string' },
    write: { type: 'string' },
    bins: { type: 'boolean', default: false },
  },
});

function dossier(seed: number): Simulated {
  const printings = Number(values.printings);
  return simulate({
    seed,
    printings,
    claims: Number(values.claims ?? usualClaims(printings)),
    difficulty: values.difficulty as Difficulty,
    style: values.style as Style,
    ...(values.sources && { sources: Number(values.sources) }),
  });
}

if (!['medium', 'hard'].includes(values.difficulty)) throw new RangeError('no such difficulty');
if (!['cards', 'software', 'sparse', 'copies'].includes(values.style)) {
  throw new RangeError('no such style');
}
const seed = Number(values.seed);
if (values.write !== undefined) {
  writeDossier(values.write, dossier(seed), `Simulated, seed ${seed}`);
} else {
  const told = values.style === 'software' ? [] : ['informed'];
  const all = ['majority', 'em', ...told, 'date'];
  const names = values.engine === 'all' ? all : values.engine.split(',');
  console.log(header());
  for (const name of names) {
    const engine = ENGINES[name];
    if (engine === undefined) throw new RangeError(`no engine ${name}`);
    const scores: Score[] = [];
    const times: number[] = [];
    const cases: string[] = [];
    for (let i = 0; i < Number(values.dossiers); i++) {
      const one = dossier(seed * 100_000 + i);
      const start = performance.now();
      const answer = engine(one.evidence, one.truth, seed);
      times.push(performance.now() - start);
      scores.push(score(answer, one));
      if (values.worst)
        cases.push(...worstOf(answer, one, Number(values.worst), seed * 100_000 + i));
    }
    console.log(row(name, scores, times, values.bins));
    if (values.worst) console.log(cases.sort().slice(0, Number(values.worst)).join('\n\n'));
  }
}
