export { applyChanges } from './apply.ts';
export { freshDossier } from './fresh.ts';
export { knownOf, newestDay, printingsIn, seenOf } from './identification.ts';
export { changesBetween, mergeTables } from './merge.ts';
export { isSafeName } from './names.ts';
export { readDossier } from './read.ts';
export { DOCUMENTS, TABLES } from './schema.ts';
export type * from './types.ts';
export { applyWhole, isExamination, wholeDifferences } from './whole-file.ts';
