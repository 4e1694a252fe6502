export { missingIn } from './missing.ts';
export type * from './types.ts';
export { LACKS } from './why.ts';
