/** How the page is built: from web/ into dist/, with a service worker that keeps it working without a network. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { chunkOf } from './build/chunks.ts';
import { compressed } from './build/compressed.ts';
import { smallEngraver } from './build/engraver.ts';
import { smallFonts } from './build/fonts.ts';
import { preloadedFonts } from './build/preloads.ts';

// For development only: without it the page is whole, and needs the service to be there.
// Named apart from the import, so that reading this file does not complain where it is missing.
const PWA: string = 'vite-plugin-pwa';
const pwa = await (import(PWA) as Promise<typeof import('vite-plugin-pwa')>).catch(() => undefined);

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  resolve: { alias: await smallFonts() },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    // A font or picture written into the style sheet would need `data:` in the content security policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
    // Two pages: the pupil's, and the marking desk.
    rolldownOptions: {
      input: {
        page: fileURLToPath(new URL('index.html', import.meta.url)),
        desk: fileURLToPath(new URL('desk/index.html', import.meta.url)),
      },
      // Its lists of every chord and scale are built as they are loaded; the page asks for none of them.
      treeshake: { moduleSideEffects: [{ test: /[/\\]@tonaljs[/\\]/, sideEffects: false }] },
      output: { codeSplitting: { groups: [{ name: chunkOf, debugName: 'shared' }] } },
    },
  },
  worker: { format: 'es' },
  plugins: [
    smallEngraver(),
    preloadedFonts(),
    pwa?.VitePWA({
      injectRegister: false,
      registerType: 'prompt',
      manifest: {
        name: 'Partwise',
        short_name: 'Partwise',
        description:
          'Checks four-part chorale harmonisations: what is wrong, where, why, and which way to look.',
        start_url: './',
        display: 'standalone',
        background_color: '#faf6ec',
        theme_color: '#faf6ec',
        icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2}'],
        maximumFileSizeToCacheInBytes: 4_000_000,
        // What the service answers is never the page.
        navigateFallbackDenylist: [/^\/api\//, /^\/desk\//],
      },
    }),
    compressed(),
  ],
});
