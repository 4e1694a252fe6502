export { withoutStays } from './kept.ts';
export { leavingOf } from './leaving.ts';
export { harmfulIn } from './patterns/harmful.ts';
export { creditOf, isBareConsent, staysIn } from './stays.ts';
export type * from './types.ts';
