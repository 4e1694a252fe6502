export * from './beta-binomial.ts';
export * from './binomial.ts';
export * from './chance.ts';
export {
  type BinaryProgram,
  type BinarySolution,
  chooseBest,
} from './integer-program.ts';
export * from './jaro-winkler.ts';
export * from './least-squares.ts';
export { placed } from './placed.ts';
export { positiveNormal } from './positive-normal.ts';
export * from './quantiles.ts';
export { redraw, type Spread, spreadOf } from './spread.ts';
export * from './symmetric.ts';
