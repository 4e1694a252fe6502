export * from './chance.ts';
