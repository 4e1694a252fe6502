export { type DateOptions, date } from './date.ts';
export type * from './types.ts';
