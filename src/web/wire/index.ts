export * from './ask.ts';
export * from './bench.ts';
export * from './changes.ts';
export * from './queries.ts';
