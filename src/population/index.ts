export * from './extant/capture.ts';
export * from './extant/uneven.ts';
export { populationOf } from './population.ts';
export type * from './types.ts';
