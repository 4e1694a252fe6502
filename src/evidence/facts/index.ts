export { type Assumed, type Compared, dependence } from './dependence.ts';
export { latentTruth, type Truths } from './latent.ts';
export type { Item, Problem, Tying, Voice } from './problem.ts';
export type * from './types.ts';
export { weighFacts } from './weigh.ts';
