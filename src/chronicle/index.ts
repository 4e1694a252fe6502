export * from './film/index.ts';
export type * from './paper/types.ts';
