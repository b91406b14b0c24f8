/** The pages name their fonts in the head, so that they come with the scripts and not after them. */
import type { Plugin } from 'vite';

export function preloadedFonts(): Plugin {
  return {
    name: 'partwise-preloaded-fonts',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: (_html, { bundle, path }) =>
        Object.keys(bundle ?? {})
          .filter((file) => file.endsWith('.woff2'))
          .map((file) => ({
            tag: 'link',
            attrs: {
              rel: 'preload',
              as: 'font',
              type: 'font/woff2',
              crossorigin: true,
              href: `${path.startsWith('/desk/') ? '../' : './'}${file}`,
            },
            injectTo: 'head',
          })),
    },
  };
}
