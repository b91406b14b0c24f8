/**
 * The engraver without what is not drawn. Its entry names every class it has in one object, so that nothing could be
 * left out; here the parts are imported each for itself, and the table of three thousand sign names gives way to the
 * signs themselves.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Plugin } from 'vite';

// The package tells of its entries only, from which the way to its parts is known.
const SOURCES = join(dirname(createRequire(import.meta.url).resolve('vexflow/core')), '../esm/src');
const GLYPHS = join(SOURCES, 'glyphs.js');

export function smallEngraver(): Plugin {
  const signs = new Map(
    [...readFileSync(GLYPHS, 'utf8').matchAll(/Glyphs\["(\w+)"\] = ("[^"]*")/g)].map(
      ([, name, sign]) => [name!, sign!] as const,
    ),
  );
  return {
    name: 'partwise-small-engraver',
    apply: 'build',
    enforce: 'pre',
    resolveId: {
      filter: { id: /^vexflow\/core$/ },
      handler: () => ({ id: join(SOURCES, 'index.js'), moduleSideEffects: false }),
    },
    transform: {
      filter: { id: /vexflow\/build\/esm\/src\/\w+\.js$/ },
      handler: (code, id) => ({
        code: id === GLYPHS ? code : lean(code, signs),
        map: null,
        moduleSideEffects: false,
      }),
    },
  };
}

/**
 * Signs for their names. And styles copied as what they are, flat objects of numbers and words: the engraver copies them
 * in depth, some four hundred times for a changed note.
 */
function lean(code: string, signs: ReadonlyMap<string, string>): string {
  return withSigns(code, signs).replaceAll(/structuredClone\(([\w.]+)\)/g, '({ ...$1 })');
}

/** `Glyphs.gClef`, and `const { gClef, fClef } = Glyphs`, as the strings they stand for. */
function withSigns(code: string, signs: ReadonlyMap<string, string>): string {
  return code
    .replaceAll(/\bGlyphs\.(\w+)/g, (whole, name) => signs.get(name) ?? whole)
    .replaceAll(/const \{ ([\w, ]+) \} = Glyphs;/g, (_, names: string) =>
      names
        .split(', ')
        .map((name) => `const ${name} = ${signs.get(name)};`)
        .join(' '),
    );
}
