export { compareRevisions } from './compare.ts';
export { historyOf, type ToldNow } from './history.ts';
export { revisionText, type StateGround, stateOf } from './state.ts';
export type * from './types.ts';
