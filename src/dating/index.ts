export { date } from './date.ts';
export type * from './types.ts';
