export type { Order } from './cutset.ts';
export { type DateOptions, date } from './date.ts';
export { type DatedEvent, sequencePosterior } from './poset.ts';
export { type DatingChange, withChange } from './redate/change.ts';
export { type ClaimsChange, compareClaims } from './redate/compare.ts';
export { type Kept, openDating } from './redate/kept.ts';
export { redate } from './redate/redate.ts';
export type * from './types.ts';
