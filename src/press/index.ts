export { type AccountOptions, type Worked, worked } from './account.ts';
export { type Edition, editionOf, keepRevision, publishInto, stateIn } from './edition.ts';
export { type KitOptions, kitFiles, SPOKEN, writeKit } from './film/kit.ts';
export { stillsInto } from './film/stills.ts';
export { leavingIn } from './leaving.ts';
export { madeWith } from './made-with.ts';
export { siteFiles } from './site.ts';
export type { Files, Told } from './told.ts';
