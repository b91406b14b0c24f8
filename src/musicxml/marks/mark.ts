/**
 * The pupil's own file with what a review says put into it. The file itself is not written anew: our elements are
 * inserted into its bytes, and everything else stays as it was, other parts, layout, words, comments and all.
 */
import { strToU8 } from 'fflate';
import { type Score, VOICES } from '../../score/score.ts';
import type { NumberMark, ScoreAnnotations } from '../annotations.ts';
import { isArchive, packScore, replaceScore, unpackScore } from '../archive.ts';
import type { ReadFrom } from '../assemble.ts';
import { decodeXml } from '../decode.ts';
import { type ReadOptions, readScore, type ScoreInText } from '../read.ts';
import { type WriteOptions, writeMusicXml } from '../write.ts';
import { carrierOfLabel, carrierOfNumber, noteAt } from './carriers.ts';
import { colourInsertions, listInsertion, lyricInsertion, numberInsertion } from './note-marks.ts';
import { type Insertion, rangesOfOurs, without } from './ours.ts';
import { splice } from './splice.ts';
import { tagStart } from './spots.ts';

export interface MarkOptions extends ReadOptions {
  /** What is wanted; as the file came where nothing is said. */
  readonly form?: 'musicxml' | 'mxl';
}

/**
 * Puts annotations into a file that has been read: they speak of the score that `readMusicXml` gives for the same bytes
 * and options. Marks that were put in before are replaced; doing it twice gives the same bytes.
 */
export function markMusicXml(
  bytes: Uint8Array,
  annotations: ScoreAnnotations,
  options: MarkOptions = {},
): Uint8Array {
  const packed = isArchive(bytes);
  const file = packed ? unpackScore(bytes) : bytes;
  const decoded = decodeXml(file);
  const old = rangesOfOurs(decoded.text);
  const text = without(decoded.text, old);
  const marked = splice(file, decoded, old, insertionsFor(text, readScore(text, options), annotations));
  const form = options.form ?? (packed ? 'mxl' : 'musicxml');
  if (form === 'musicxml') return marked;
  return packed ? replaceScore(bytes, marked) : packScore(marked);
}

/**
 * A new file of a score with annotations put in, for what did not come as MusicXML.
 * @throws {Refused} where the score is too long to be read again
 */
export function markedScore(
  score: Score,
  annotations: ScoreAnnotations,
  { form, ...options }: WriteOptions & Pick<MarkOptions, 'form'> = {},
): Uint8Array {
  const plain = strToU8(writeMusicXml(score, options));
  const empty = VOICES.every((voice) => score.voices[voice].every((event) => event.kind !== 'note'));
  if (!empty) return markMusicXml(plain, annotations, form === undefined ? {} : { form });
  return form === 'mxl' ? packScore(plain) : plain;
}

function insertionsFor(text: string, read: ScoreInText, annotations: ScoreAnnotations): Insertion[] {
  return [
    ...listInsertions(text, read, annotations),
    ...numberInsertions(text, read, annotations),
    ...headInsertions(text, read, annotations),
    ...rowInsertions(text, read, annotations),
  ];
}

/**
 * The list stands over the first note of all. Tried and left: text at the foot of the page, which engravers print over
 * the title or pass over, and text under the last bar, which leaves the page on its right.
 */
function listInsertions(text: string, { source }: ScoreInText, { list }: ScoreAnnotations): Insertion[] {
  const [part] = source.parts;
  const first = part?.bars.find((bar) => bar.notes.length > 0)?.notes[0];
  if (part === undefined || first === undefined || list.length === 0) return [];
  return [listInsertion(tagStart(text, first.span.inside), list, part.staves > 1)];
}

/** Numbers, all that stand at one moment over one staff together. */
function numberInsertions(text: string, read: ScoreInText, { numbers }: ScoreAnnotations): Insertion[] {
  const places = new Map<string, { note: ReadFrom; marks: NumberMark[] }>();
  for (const mark of numbers) {
    const note = carrierOfNumber(read.readFrom, mark.voice, mark.at);
    if (note === undefined) continue;
    const key = `${note.part}.${note.note.staff}@${Math.max(mark.at, note.at)}`;
    const place = places.get(key) ?? { note, marks: [] };
    places.set(key, place);
    place.marks.push(mark);
  }
  return [...places.values()].map(({ note, marks }) => {
    const [first] = marks;
    const into = Math.max(0, first!.at - note.at) / (note.until - note.at);
    const words = { ...first!, text: marks.map((mark) => mark.text).join(', ') };
    return numberInsertion(text, headOf(note), into < 1 ? into : 0, words);
  });
}

function headInsertions(text: string, read: ScoreInText, { noteheads }: ScoreAnnotations): Insertion[] {
  // A note sung by two voices is coloured once.
  const done = new Set<number>();
  return noteheads.flatMap(({ voice, at, colour }) => {
    const note = noteAt(read.readFrom, voice, at);
    if (note === undefined || note.at !== at || done.has(note.note.span.inside)) return [];
    done.add(note.note.span.inside);
    return colourInsertions(text, note.note.span.inside, colour);
  });
}

/** How the rows are named in the file, and what stands between two words under one note. */
const ROWS = [
  { name: 'numerals', between: '–' },
  { name: 'cadences and keys', between: ', ' },
] as const;

/** Each row is a verse of its own after those of the file: no other element is set in one line by every program. */
function rowInsertions(text: string, read: ScoreInText, { rows }: ScoreAnnotations): Insertion[] {
  const verses = lastVerse(text);
  return rows.flatMap((labels, row) => {
    const { name, between } = ROWS[row]!;
    const words = new Map<number, string[]>();
    for (const label of labels) {
      const note = carrierOfLabel(read.readFrom, label.at);
      if (note === undefined) continue;
      const inside = headOf(note);
      words.set(inside, [...(words.get(inside) ?? []), label.text]);
    }
    return [...words].map(([inside, said]) =>
      lyricInsertion(text, inside, { number: verses + row + 1, name, words: said.join(between) }),
    );
  });
}

function lastVerse(text: string): number {
  const numbers = [...text.matchAll(/<lyric\b[^>]*?\snumber\s*=\s*["'](\d{1,3})["']/g)].map(([, n]) =>
    Number(n),
  );
  return Math.max(text.includes('<lyric') ? 1 : 0, ...numbers);
}

/** Words and numbers stand at the first note of a chord. */
function headOf({ note }: ReadFrom): number {
  return (note.head ?? note.span).inside;
}
