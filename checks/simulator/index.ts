export * from './simulate.ts';
export type * from './types.ts';
