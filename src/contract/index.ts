export * from './bench.ts';
export * from './dating.ts';
export * from './decide.ts';
export * from './dossier.ts';
export * from './facts.ts';
export * from './notes.ts';
export * from './routes.ts';
export * from './rows.ts';
