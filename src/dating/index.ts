export { type DateOptions, date } from './date.ts';
export { type DatedEvent, type Order, sequencePosterior } from './poset.ts';
export type * from './types.ts';
