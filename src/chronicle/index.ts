export * from './downloads/index.ts';
export type * from './figures/types.ts';
export * from './film/index.ts';
export * from './leaving/index.ts';
export type * from './paper/types.ts';
export * from './revisions/index.ts';
