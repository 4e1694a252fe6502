export * from './ask.ts';
export * from './changes.ts';
export * from './queries.ts';
