export * from './chance.ts';
export * from './least-squares.ts';
