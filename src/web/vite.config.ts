import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Builds the workbench for the browser: `vite build src/web`. */
export default defineConfig({
  root: import.meta.dirname,
  base: './',
  plugins: [react()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    // Nothing inline: the policy of the page allows no `data:` but for pictures.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
  },
});
