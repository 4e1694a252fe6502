export { printingCalled } from './called.ts';
export * from './day.ts';
export type * from './edtf.ts';
export { type EdtfReading, parseEdtf } from './edtf-parse.ts';
export { edtfOfRange } from './edtf-range.ts';
export * from './facts/index.ts';
export * from './notes/index.ts';
export * from './spoken.ts';
export * from './types.ts';
