import { createRequire } from 'node:module';
import { CALLED } from './slices.ts';

const require = createRequire(import.meta.url);

/** By what fonts are cut, with versions: of the same letters the same bytes come of the same makers. */
export const FONT_MAKERS: readonly string[] = [
  'subset-font',
  ...Object.keys(CALLED).map((family) => `@fontsource-variable/${family}`),
].map((name) => `${name} ${require(`${name}/package.json`).version}`);
