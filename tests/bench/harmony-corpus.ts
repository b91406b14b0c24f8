/** The open chorales with a musicologist's analysis, from `../shared/corpus/chorales` beside the repository. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import * as z from 'zod';
import { CHORD_TYPES, memberIndex } from '../../src/harmony/chord-types.ts';
import { type Grid, gridOf } from '../../src/harmony/reading/model/grid.ts';
import { phrasesOf } from '../../src/harmony/reading/phrases.ts';
import { openScore } from '../../src/open/open.ts';
import { fifthsPlace, parseNoteName, semitone } from '../../src/score/pitch.ts';
import { type Texture, textureOf } from '../../src/score/texture.ts';

export const CORPUS = new URL('../../../shared/corpus/chorales/', import.meta.url);

const HumanFile = z.object({
  number: z.number(),
  title: z.string(),
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

/** One human label in our numbers; `type` is -1 for a chord we have no type for. Times in crotchets. */
export interface HumanLabel {
  readonly from: number;
  readonly until: number;
  readonly tonic: number;
  readonly mode: 0 | 1;
  readonly root: number;
  readonly bass: number;
  readonly type: number;
  readonly seventh: boolean;
  readonly quality: string;
  readonly figure: string;
}

export interface Piece {
  readonly name: string;
  readonly title: string;
  readonly texture: Texture;
  readonly grid: Grid;
  readonly labels: readonly HumanLabel[];
  /** Pieces that share a tune share this number. */
  readonly tune: number;
}

export function corpusPresent(): boolean {
  return existsSync(CORPUS);
}

/** Reads the corpus, or the named pieces of it. Throws where a file cannot be read. */
export function readCorpus(names?: readonly string[]): Piece[] {
  const files = readdirSync(CORPUS)
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -5))
    .filter((name) => names === undefined || names.includes(name))
    .sort();
  const pieces = files.map((name) => {
    const opened = openScore(new Uint8Array(readFileSync(new URL(`${name}.mxl`, CORPUS))));
    if (!opened.ok) throw new Error(`${name}.mxl: ${opened.message}`);
    const human = HumanFile.parse(JSON.parse(readFileSync(new URL(`${name}.json`, CORPUS), 'utf8')));
    const texture = textureOf(opened.score);
    return {
      name,
      title: human.title,
      texture,
      grid: gridOf(texture, phrasesOf(texture)),
      labels: human.labels.map(readLabel),
      tune: 0,
    };
  });
  const tunes = tuneNumbers(pieces);
  return pieces.map((piece, i) => ({ ...piece, tune: tunes[i]! }));
}

function readLabel(label: z.infer<typeof HumanFile>['labels'][number]): HumanLabel {
  const place = (text: string) => {
    const name = parseNoteName(text);
    if (name === undefined) throw new Error(`"${text}" is no note name.`);
    return fifthsPlace(name);
  };
  const letter = label.key[0]!;
  const mode = letter === letter.toUpperCase() ? 0 : 1;
  // `V6/5/V`: a slash before a figure belongs to the figures, one before a numeral applies the chord.
  const base = label.figure.replace(/\/(?=\d)/g, '').split('/')[0]!;
  const seventh = /7|65|43|[^#b\d]2$|9/.test(base);
  const root = place(label.root);
  return {
    from: label.offset,
    until: label.end,
    tonic: place(letter.toUpperCase() + label.key.slice(1)),
    mode,
    root,
    bass: place(label.bass),
    type: typeOf(label.quality, base, seventh),
    seventh,
    quality: label.quality,
    figure: label.figure,
  };
}

function typeOf(quality: string, base: string, seventh: boolean): number {
  const special = /^(It|Fr|Ger)/.exec(base)?.[1];
  const major = base.includes('maj');
  const names: Record<string, string> = {
    major: seventh ? (major ? 'Mmaj7' : 'M7') : 'M',
    minor: seventh ? (major ? 'mmaj7' : 'm7') : 'm',
    diminished: seventh ? (base.includes('ø') ? 'ø7' : 'o7') : 'o',
    augmented: seventh ? '+maj7' : '+',
  };
  const name = special ?? names[quality];
  return CHORD_TYPES.findIndex((type) => type.name === name);
}

/** A human label's inversion, 0 where its bass is no member. */
export function labelInversion(label: HumanLabel): 0 | 1 | 2 | 3 {
  return Math.max(0, memberIndex(label.root, label.type, label.bass)) as 0 | 1 | 2 | 3;
}

/** Numbers the tunes: pieces of one title, or whose melodies begin nearly alike in any key, are one tune. */
function tuneNumbers(pieces: readonly { title: string; texture: Texture }[]): number[] {
  const melodies = pieces.map(({ texture }) => {
    const heights = texture.tones.S.map((tone) => semitone(tone.pitch));
    return heights.slice(1, 29).map((height, i) => height - heights[i]!);
  });
  const tune = pieces.map((_, i) => i);
  const find = (i: number): number => (tune[i] === i ? i : find(tune[i]!));
  for (let i = 0; i < pieces.length; i++)
    for (let j = 0; j < i; j++) {
      const alike = pieces[i]!.title === pieces[j]!.title || distance(melodies[i]!, melodies[j]!) <= 9;
      if (alike) tune[find(i)] = find(j);
    }
  return pieces.map((_, i) => find(i));
}

/** Edit distance between two lists of moves. */
function distance(a: readonly number[], b: readonly number[]): number {
  let row = b.map((_, j) => j + 1);
  row.unshift(0);
  for (const [i, x] of a.entries()) {
    const next = [i + 1];
    for (const [j, y] of b.entries())
      next.push(Math.min(next[j]! + 1, row[j + 1]! + 1, row[j]! + (x === y ? 0 : 1)));
    row = next;
  }
  return row.at(-1)!;
}
