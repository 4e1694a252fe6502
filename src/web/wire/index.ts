export * from './ask.ts';
export * from './bench.ts';
export * from './changes.ts';
export * from './decide.ts';
export * from './identify.ts';
export * from './listing.ts';
export * from './pictures.ts';
export * from './queries.ts';
