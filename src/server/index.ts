export type { Dater, Effort } from './dater.ts';
export { type Running, type StartOptions, startServer } from './start.ts';
