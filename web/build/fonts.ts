/** Fonts with the signs that the page can draw and no others: a seventh of the music font. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';
import { MUSIC_SIGNS, WORD_SIGNS } from './signs.ts';

const CACHE = fileURLToPath(new URL('../../.cache/fonts', import.meta.url));
const resolve = createRequire(import.meta.url).resolve;

/** The fonts by the names they are imported under, with the signs kept of each. */
const FONTS: Readonly<Record<string, string>> = {
  '@vexflow-fonts/bravura/bravura.woff2': MUSIC_SIGNS,
  '@vexflow-fonts/academico/academico.woff2': WORD_SIGNS,
};

/** What to put in each font's place, as Vite's `resolve.alias` takes it. Made once for each list of signs. */
export function smallFonts(): Promise<{ readonly find: RegExp; readonly replacement: string }[]> {
  return Promise.all(
    Object.entries(FONTS).map(async ([name, signs]) => ({
      // Style sheets name the file, scripts ask for its address (`?url`).
      find: new RegExp(`^${name}(?=\\?|$)`),
      replacement: await smallFont(name, signs),
    })),
  );
}

async function smallFont(name: string, signs: string): Promise<string> {
  const whole = readFileSync(resolve(name));
  const stamp = createHash('sha256').update(whole).update(signs).digest('hex').slice(0, 12);
  const folder = join(CACHE, stamp);
  const path = join(folder, name.split('/').at(-1)!);
  if (existsSync(path)) return path;
  mkdirSync(folder, { recursive: true });
  // Several builds may come here at once: none sees half a file.
  const draft = `${path}.${process.pid}`;
  writeFileSync(draft, await subsetFont(whole, signs, { targetFormat: 'woff2' }));
  renameSync(draft, path);
  return path;
}
