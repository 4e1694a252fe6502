export { type Assumed, type Compared, dependence } from './dependence.ts';
export {
  type Item,
  latentTruth,
  type Problem,
  type Truths,
  type Tying,
  type Voice,
} from './latent.ts';
export type * from './types.ts';
export { weighFacts } from './weigh.ts';
