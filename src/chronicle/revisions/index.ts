export { compareRevisions, type State } from './compare.ts';
export { type FreezeGround, freeze, revisionText } from './freeze.ts';
export { releaseFigures } from './release-figures.ts';
export type * from './types.ts';
