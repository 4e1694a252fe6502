export { type AccountOptions, type Worked, worked } from './account.ts';
export { documentsOf, documentViews, settled } from './documents.ts';
export { downloadFiles } from './downloads.ts';
export {
  type Edition,
  editionOf,
  keepRevision,
  proofOf,
  publishInto,
  stateIn,
  toldHistory,
} from './edition.ts';
export { type KitOptions, kitFiles, SPOKEN, writeKit } from './film/kit.ts';
export { stillsInto } from './film/stills.ts';
export { leavingIn } from './leaving.ts';
export { madeWith } from './made-with.ts';
export { type PublishedWith, publishedFiles } from './site.ts';
export type { Files, Told } from './told.ts';
