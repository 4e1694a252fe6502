export { annotationsOf } from './annotations.ts';
export { cslOf } from './csl.ts';
export { csvOf, jsonOf } from './csv.ts';
export { feedOf } from './feed.ts';
export { researchZip, sharedTables } from './zip.ts';
