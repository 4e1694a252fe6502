import { readFileSync } from 'node:fs';
import type { Problem } from '../../src/evidence/index.ts';

/** Answer of an EM in R on the table of Dawid and Skene 1979, and what the paper itself prints. */
export interface DawidSkene {
  readonly marginals: readonly number[];
  readonly error_rates: readonly {
    readonly observer: number;
    readonly rows_true_cols_reported: readonly (readonly number[])[];
  }[];
  readonly posterior: readonly (readonly number[])[];
}

const FOLDER = new URL('../fixtures/dawid-skene/', import.meta.url);

/** The fixture `em.json`: maximum likelihood, a smoothed run, the paper's two decimals. */
export function dawidSkeneAnswers(): {
  mle: DawidSkene;
  smoothed: DawidSkene;
  published: { marginals: readonly number[]; observer1: readonly (readonly number[])[] };
} {
  return JSON.parse(readFileSync(new URL('em.json', FOLDER), 'utf8'));
}

const OBSERVERS = 5;
const CLASSES = 4;

/** Their model: each observer has a whole matrix of errors. `pseudo` is added to every count. */
export function dawidSkeneProblem(pseudo: number): Problem {
  const [, ...lines] = readFileSync(new URL('ratings.csv', FOLDER), 'utf8').trim().split('\n');
  const ratings = lines.map((line) => line.split(',').map(Number));
  const patients = Math.max(...ratings.map(([patient]) => patient!));
  return {
    items: Array.from({ length: patients }, () => ({ group: 0, candidates: [0, 1, 2, 3] })),
    voices: ratings.map(([patient, observer, , rating]) => ({
      item: patient! - 1,
      source: observer! - 1,
      value: rating! - 1,
      weight: 1,
      copied: 0,
      derived: 0,
    })),
    tying: {
      columns: CLASSES,
      // The last row takes the candidate "none of the four", whose probability is always 0.
      pseudo: new Float64Array((OBSERVERS * CLASSES + 1) * CLASSES).fill(pseudo),
      cell: (source, truth, value) =>
        (truth < 0 ? OBSERVERS * CLASSES : source * CLASSES + truth) * CLASSES + value,
      share: () => 1,
    },
    vocabulary: [CLASSES],
    classPseudo: pseudo,
    own: 'counted',
    enough: 1e-13,
  };
}
