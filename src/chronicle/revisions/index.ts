export { compareRevisions } from './compare.ts';
export { revisionText, type StateGround, stateOf } from './state.ts';
export type * from './types.ts';
