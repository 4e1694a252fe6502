export * from './captions/cues.ts';
export * from './captions/write.ts';
export * from './chapters.ts';
export * from './cut/marks.ts';
export * from './cut/plan.ts';
export * from './cut/retime.ts';
export * from './description.ts';
export * from './edit/lay.ts';
export * from './edit/timeline.ts';
export { readingPage } from './page/reading-page.ts';
export {
  inOrder,
  listedIds,
  type Telling as TellingOrder,
  type UnknownEntry,
} from './script/order.ts';
export * from './script/reading-time.ts';
export * from './script/script.ts';
export * from './spoken/index.ts';
export * from './spoken-figures/freeze.ts';
export * from './spoken-figures/moved.ts';
export { lettersOf, type StillWish, stillsOf } from './stills/stills.ts';
export type { Face, Measure, Still, StillPicture } from './stills/types.ts';
export type * from './types.ts';
