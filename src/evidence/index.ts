export * from './day.ts';
export type * from './edtf.ts';
export * from './types.ts';
