import * as dating from '../../src/dating/index.ts';
import type { Evidence } from '../../src/evidence/index.ts';

import { em } from './em/index.ts';
import type { Answer, Engine } from './engine.ts';
import { informed } from './informed.ts';
import { majority } from './majority.ts';

type Door = { readonly date?: (evidence: Evidence, options: object) => Answer };

/** The engine of the project; throws Error while it has not landed. */
function dated(evidence: Evidence, seed: number, effort: 'first' | 'refined'): Answer {
  const { date } = dating as Door;
  if (date === undefined) throw new Error('src/dating has no date() yet');
  return date(evidence, { seed, effort });
}

/** Ways of dating that can be compared, by the name that the command takes. */
export const ENGINES: Readonly<Record<string, Engine>> = {
  date: (evidence, _truth, seed) => dated(evidence, seed, 'refined'),
  first: (evidence, _truth, seed) => dated(evidence, seed, 'first'),
  majority: (evidence) => majority(evidence),
  em: (evidence) => em(evidence),
  informed: (evidence, truth) => informed(evidence, truth),
};
