export { type AccountOptions, type Worked, worked } from './account.ts';
export { documentsOf, documentViews } from './documents.ts';
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
export { filmInto, type KitOptions, SPOKEN } from './film/kit.ts';
export { stillViews } from './film/stills.ts';
export { leavingIn } from './leaving.ts';
export { madeWith } from './made-with.ts';
export { settled } from './settled.ts';
export { type PublishedWith, publishOn, siteFiles } from './site.ts';
export type { Files, Told } from './told.ts';
