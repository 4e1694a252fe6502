import { date } from '../../src/dating/index.ts';
import { em } from './em/index.ts';
import type { Engine } from './engine.ts';
import { informed } from './informed.ts';
import { majority } from './majority.ts';

/** Ways of dating that can be compared, by the name that the command takes. */
export const ENGINES: Readonly<Record<string, Engine>> = {
  date: (evidence, _truth, seed) => date(evidence, { seed, effort: 'refined' }),
  first: (evidence, _truth, seed) => date(evidence, { seed, effort: 'first' }),
  majority: (evidence) => majority(evidence),
  em: (evidence) => em(evidence),
  informed: (evidence, truth) => informed(evidence, truth),
};
