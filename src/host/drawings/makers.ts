import { createRequire } from 'node:module';

/** By what drawings become pictures: the same bytes come of the same drawing and fonts. */
export const DRAWING_MAKERS: readonly unknown[] = [
  createRequire(import.meta.url)('@resvg/resvg-js/package.json').version,
];
