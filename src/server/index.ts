export type { Dater, Effort } from './dater.ts';
export { doorsOf } from './doors.ts';
export { type Running, type StartOptions, startServer } from './start.ts';
