/** The tables in DEVELOPERS.md say what the import rules enforce, and the rules know every folder there is. */
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';

const { forbidden } = z
  .object({ forbidden: z.array(z.object({ name: z.string(), comment: z.string().optional() })) })
  .parse(createRequire(import.meta.url)('../.dependency-cruiser.cjs'));

const comments = new Map(forbidden.map(({ name, comment }) => [name, comment ?? '']));
const text = readFileSync('DEVELOPERS.md', 'utf8');

/** The folders a rule's comment names after `may import`. */
function enforced(folder: string): string[] {
  const comment = comments.get(`layers-${folder}`) ?? '';
  return [...comment.slice(comment.indexOf('may import')).matchAll(/src\/(?:harmony\/)?([\w-]+)/g)].map(
    ([, name]) => name!,
  );
}

/** The folders in the last column of the row that begins with this folder. */
function documented(shown: string): string[] | undefined {
  const row = text.split('\n').find((line) => line.startsWith(`| \`${shown}\` |`));
  const cell = row?.split('|')[3]?.trim();
  if (cell === undefined) return undefined;
  return /^no(thing)? /.test(cell) ? [] : cell.split(', ');
}

function folders(of: string): string[] {
  return readdirSync(of, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);
}

describe('what may import what', () => {
  it.each(folders('src').filter((name) => name !== 'cli'))('src/%s', (name) => {
    expect(comments.has(`layers-${name}`), 'an import rule').toBe(true);
    expect(documented(`src/${name}`)?.toSorted()).toEqual(enforced(name).toSorted());
  });

  it.each(folders('src/harmony'))('src/harmony/%s', (name) => {
    expect(comments.has(`layers-${name}`), 'an import rule').toBe(true);
    expect(documented(name)?.toSorted()).toEqual(enforced(name).toSorted());
  });
});
