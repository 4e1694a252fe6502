export { accountGroundIn } from './account-ground.ts';
export { applyChanges } from './apply.ts';
export { correctionFaultsIn } from './corrections.ts';
export { deskIn } from './decision-ground.ts';
export {
  type CopyRow,
  conditionWordsOf,
  copiesOf,
  deadlinesOf,
  gradeSettingOf,
} from './desk.ts';
export { freshDossier } from './fresh.ts';
export { type Kept, keptOf, knownOf, readerOf, seenOf } from './identification.ts';
export { leavingGroundIn } from './leaving-ground.ts';
export { changesBetween, mergeTables } from './merge.ts';
export { isSafeName } from './names.ts';
export { newestDay } from './newest-day.ts';
export { packetGroundIn } from './packet-ground.ts';
export { type ReadRecords, recordsOf } from './population.ts';
export { type DossierPrices, homeOf, pricesIn } from './price-ground.ts';
export { readDossier } from './read.ts';
export { readRevisions, revisionName } from './revisions.ts';
export { DOCUMENTS, TABLES } from './schema.ts';
export { shownSales } from './shown-sales.ts';
export { storyFaultsIn } from './story-faults.ts';
export type * from './types.ts';
export { applyWhole, isExamination, wholeDifferences } from './whole-file.ts';
