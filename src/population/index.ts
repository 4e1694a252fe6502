export { type BoundClaim, boundClaimsOf } from './bounds.ts';
export * from './extant/capture.ts';
export * from './extant/uneven.ts';
export { gradeCountsOf } from './grade-counts.ts';
export { letterTo } from './letter.ts';
export { type PastedReport, readReport } from './paste/report.ts';
export { populationOf } from './population.ts';
export type * from './types.ts';
