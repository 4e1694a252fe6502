export * from './film/index.ts';
