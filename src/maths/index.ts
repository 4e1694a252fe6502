export * from './beta-binomial.ts';
export * from './binomial.ts';
export * from './chance.ts';
export * from './jaro-winkler.ts';
export * from './least-squares.ts';
