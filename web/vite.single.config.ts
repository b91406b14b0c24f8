/**
 * The page as one file, dist/partwise.html, that opens by double-click from a memory stick or a shared folder: script,
 * worker, styles, fonts and sound are all inside, and no server is asked for anything.
 */
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { viteSingleFile } from 'vite-plugin-singlefile';
import { smallEngraver } from './build/engraver.ts';
import { smallFonts } from './build/fonts.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Takes the worker from within, drops the link to an icon that would lie beside the page, and names the file. */
function alone(): Plugin {
  return {
    name: 'partwise-alone',
    enforce: 'pre',
    resolveId(source) {
      return source === './hire.ts' ? here('worker/hire-inline.ts') : null;
    },
    transformIndexHtml: (html) => html.replace(/<link rel="icon"[^<>]*>/, ''),
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const page = bundle['index.html'];
        if (page) page.fileName = 'partwise.html';
      },
    },
  };
}

export default defineConfig({
  root: here('.'),
  base: './',
  publicDir: false,
  resolve: { alias: await smallFonts() },
  build: {
    outDir: '../dist',
    // The served page may lie there already.
    emptyOutDir: false,
    target: 'es2022',
    assetsInlineLimit: Number.MAX_SAFE_INTEGER,
    modulePreload: false,
    chunkSizeWarningLimit: 10_000,
    rolldownOptions: { input: here('index.html') },
  },
  // A plain script: a module may not be loaded from a page without an origin, as a file on a stick has none.
  worker: { format: 'iife' },
  plugins: [smallEngraver(), alone(), viteSingleFile({ removeViteModuleLoader: true })],
});
