/** The open chorales with their published analyses. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as z from 'zod';
import { openScore } from '../../../src/open/open.ts';
import { plainOf, QUARTER } from './plain.ts';
import type { Label, Piece } from './planter.ts';

const FOLDER = fileURLToPath(new URL('../../../../shared/corpus/chorales/', import.meta.url));

const analysisSchema = z.object({
  labels: z.array(
    z.object({
      offset: z.number(),
      end: z.number(),
      key: z.string(),
      figure: z.string(),
      root: z.string(),
      bass: z.string(),
      quality: z.string(),
    }),
  ),
});

export function corpusIsThere(): boolean {
  return existsSync(FOLDER);
}

/** Every chorale, or the first few of them. Throws if one cannot be read: the bench would measure nothing. */
export function readPieces(most = Number.POSITIVE_INFINITY): Piece[] {
  const files = readdirSync(FOLDER).filter((name) => name.endsWith('.mxl'));
  return files.slice(0, most).map((name) => {
    const opened = openScore(readFileSync(FOLDER + name));
    if (!opened.ok) throw new Error(`${name} cannot be read: ${opened.message}`);
    const number = name.replace('.mxl', '');
    const analysis = `${FOLDER}${number}.json`;
    const labels = existsSync(analysis) ? readLabels(analysis) : [];
    return { number, score: opened.score, plain: plainOf(opened.score), labels };
  });
}

function readLabels(path: string): Label[] {
  const { labels } = analysisSchema.parse(JSON.parse(readFileSync(path, 'utf8')));
  return labels.map(({ offset, end, ...label }) => ({
    at: Math.round(offset * QUARTER),
    until: Math.round(end * QUARTER),
    ...label,
  }));
}
