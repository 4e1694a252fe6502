export * from './dated.ts';
export * from './days.ts';
export * from './explain.ts';
export * from './held.ts';
export * from './ids.ts';
export * from './numbers.ts';
export * from './properties.ts';
export * from './why.ts';
