export { accountOf } from './account/account.ts';
export type { AccountGround, Results } from './account/ground.ts';
export { resultsOf } from './account/results.ts';
export type * from './account/types.ts';
export * from './document/index.ts';
export * from './downloads/index.ts';
export { figureNamed, priceName } from './figures/figures.ts';
export type * from './figures/types.ts';
export * from './film/index.ts';
export * from './leaving/index.ts';
export * from './missing/index.ts';
export * from './packet/index.ts';
export type * from './paper/types.ts';
export * from './revisions/index.ts';
export { fileNameOf } from './site/addresses.ts';
export { faceOf } from './site/pictures.ts';
export { type PointedPlace, placesOn } from './site/pointed.ts';
export { siteOf } from './site/site.ts';
export type { Download, SiteGround, SitePicture } from './site/types.ts';
export type { DownloadKind } from './site/words/types.ts';
export { draftOf } from './story/draft.ts';
export { type StoryFault, type StoryKnown, storyFaults } from './story/faults.ts';
export { knownByIds, type StoryIds } from './story/known.ts';
export {
  linksIn,
  type Story,
  type StoryLink,
  type StoryNode,
  storyLink,
  storyTree,
} from './story/links.ts';
export { type StoryValue, storyValue } from './story/values.ts';
export { certaintyOf } from './words/certainty.ts';
export { tellDay, tellEdtf, tellRun } from './words/days.ts';
export { tellDoubt, tellFigure, tellFigureAsOf } from './words/figures.ts';
export { phrasesOf } from './words/languages.ts';
export { namesIn } from './words/names.ts';
export { tellAmount, tellCount, tellP, tellShare } from './words/numbers.ts';
export { factsOf } from './words/sentences.ts';
export { type Sentence, type Telling, tellingOf } from './words/telling.ts';
export * from './words/types.ts';
