/**
 * Any file's bytes → Score. What a file is shows in its content, never in its name: a zip archive and markup are
 * MusicXML, a text that begins with a tune's number (X:1) is ABC, anything else is our text notation.
 */
import {
  type Assignment,
  decodeText,
  type FoundLine,
  type MusicXmlReading,
  readMusicXml,
  type VoiceAssignment,
  wrongFile,
} from '../musicxml/index.ts';
import { readNotation } from '../notation/index.ts';
import { type Refusal, refuse } from '../refusal/refusal.ts';
import type { Score } from '../score/score.ts';

export type FileKind = 'text' | 'musicxml' | 'mxl' | 'abc';

export interface OpenedScore {
  readonly ok: true;
  readonly kind: FileKind;
  readonly score: Score;
  /** For our text notation: the text, decoded. */
  readonly text?: string;
  /** For MusicXML: on how many staves the file has its voices, so that it can be handed back likewise. */
  readonly layout?: Assignment['layout'];
  /** For MusicXML: its lines, and which sings what, so that a person can say it is otherwise. */
  readonly lines?: readonly FoundLine[];
  /** The file has marks that were put in by an earlier review. */
  readonly marked?: true;
}

/** A refusal names the first thing wrong and where, and every mistake where there are several. */
export type Opened =
  | OpenedScore
  | ({
      readonly ok: false;
      /** Where only the voices could not be told: the lines to choose them from. */
      readonly lines?: readonly FoundLine[];
    } & Refusal);

/** The most a text in our notation may hold, in bytes: some 2,000 bars. */
const MOST_TEXT_BYTES = 512 * 1024;

let readAbc: typeof import('../abc/read.ts').readAbc | undefined;

/**
 * Gets what files of a kind are read with, where that is not loaded from the beginning: ABC has a large reader, and few
 * need it. To be awaited before such a file is opened.
 */
export async function readyFor(kind: FileKind): Promise<void> {
  if (kind === 'abc') readAbcBy((await import('../abc/read.ts')).readAbc);
}

/** For whoever has the reader of ABC from the beginning and opens files without waiting. */
export function readAbcBy(reader: typeof import('../abc/read.ts').readAbc): void {
  readAbc = reader;
}

/**
 * Reads a score from a file's bytes. Never throws: what can't be read is told. Where the sender said what kind it
 * is, that holds (`declared`); else the content shows it. Which line of a MusicXML file sings which voice may be said
 * too (`voices`).
 */
export function openScore(bytes: Uint8Array, declared?: FileKind, voices?: VoiceAssignment): Opened {
  if (bytes.length === 0) return refuse('The file is empty. It should hold an exercise: text or MusicXML.');
  const wrong = wrongFile(bytes);
  if (wrong !== undefined) return refuse(wrong);
  const kind = declared ?? kindOf(bytes);
  if (kind === 'text') return openText(bytes);
  return kind === 'abc' ? openAbc(bytes, voices) : openMusicXml(bytes, kind, voices);
}

/** What the content says a file is. */
export function kindOf(bytes: Uint8Array): FileKind {
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return 'mxl';
  // The first sign that is neither a byte-order mark, nor white space, nor the empty half of a UTF-16 sign.
  for (let i = 0; i < Math.min(bytes.length, 4096); i++) {
    const byte = bytes[i]!;
    const skipped = byte <= 0x20 || byte >= 0xfe || (i < 3 && [0xef, 0xbb, 0xbf][i] === byte);
    if (!skipped) return byte === 0x3c ? 'musicxml' : isAbc(bytes) ? 'abc' : 'text';
  }
  return 'text';
}

/** How far into a text its first tune must have begun. */
const HEAD = 4096;

/** A tune's number on a line by itself, then its key. */
function isAbc(bytes: Uint8Array): boolean {
  let head = '';
  for (const byte of bytes.subarray(0, HEAD)) head += byte === 0 ? '' : String.fromCharCode(byte);
  const number = /^X:[ \t]*\d/m.exec(head);
  return number !== null && /^K:/m.test(head.slice(number.index));
}

function openMusicXml(bytes: Uint8Array, kind: FileKind, voices: VoiceAssignment | undefined): Opened {
  return opened(readMusicXml(bytes, voices === undefined ? {} : { voices }), kind);
}

function openAbc(bytes: Uint8Array, voices: VoiceAssignment | undefined): Opened {
  if (readAbc === undefined) throw new Error('ABC is opened before its reader was asked for.');
  const text = bytes.length > MOST_TEXT_BYTES ? undefined : decodeText(bytes);
  if (text === undefined) {
    return refuse('This looks like a tune in ABC, but its letters can’t be read: save it as UTF-8.');
  }
  return opened(readAbc(text, voices === undefined ? {} : { voices }), 'abc');
}

function opened(read: MusicXmlReading, kind: FileKind): Opened {
  if (!read.ok) return read;
  const { score, assignment, marked } = read;
  const { layout, lines } = assignment;
  return { ok: true, kind, score, layout, lines, ...(marked ? { marked } : {}) };
}

function openText(bytes: Uint8Array): Opened {
  if (bytes.length > MOST_TEXT_BYTES) {
    return refuse(
      `The text is ${Math.ceil(bytes.length / 1024)} kB long; at most ${MOST_TEXT_BYTES / 1024} kB can be read. An exercise of 30 bars has about 2 kB.`,
    );
  }
  const text = decodeText(bytes);
  if (text === undefined) {
    return refuse(
      'This is neither MusicXML nor text that can be read: save the exercise as MusicXML, or its text as UTF-8.',
    );
  }
  return openNotation(text);
}

/** Reads our text notation; every mistake in it is told. */
function openNotation(text: string): Opened {
  const { score, problems } = readNotation(text);
  const [first] = problems;
  if (first === undefined) return { ok: true, kind: 'text', score, text };
  const { line, column, message } = first;
  return refuse(problems.length === 1 ? message : `${problems.length} mistakes, the first: ${message}`, {
    line,
    column,
    problems,
  });
}
