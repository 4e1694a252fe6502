export { accountPaper } from './account-paper.ts';
export { checklistPaper, FITS, type Fit } from './checklist.ts';
export { keyPaper } from './key.ts';
export type { DocumentGround } from './types.ts';
export { volumesOf } from './volumes.ts';
