export { applyChanges } from './apply.ts';
export { changesBetween, mergeTables } from './merge.ts';
export { readDossier } from './read.ts';
export { freshDossier } from './fresh.ts';
export { isSafeName } from './names.ts';
export type * from './types.ts';
