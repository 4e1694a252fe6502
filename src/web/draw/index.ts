export * from './claimMarks.ts';
export * from './closeup.ts';
export * from './extent.ts';
export * from './inView.ts';
export * from './large.ts';
export * from './ribbon.ts';
export * from './scale.ts';
export * from './years.ts';
