export type { Order } from './cutset.ts';
export { type DateOptions, date } from './date.ts';
export { type DatedEvent, sequencePosterior } from './poset.ts';
export type * from './types.ts';
