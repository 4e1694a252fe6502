import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

const FONTS = ['archivo', 'newsreader', 'noto-sans-jp', 'noto-sans-kr'] as const;

/** Puts the licence of each shipped font beside the page, as the licence itself asks. */
const licences: Plugin = {
  name: 'licences-of-fonts',
  generateBundle() {
    for (const font of FONTS) {
      const path = `../../node_modules/@fontsource-variable/${font}/LICENSE`;
      const source = readFileSync(new URL(path, import.meta.url));
      this.emitFile({ type: 'asset', fileName: `licences/${font}.txt`, source });
    }
  },
};

/** Builds the workbench for the browser: `vite build src/web`. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [react(), licences],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    // Nothing inline: the policy of the page allows no `data:` but for pictures.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
  },
});
