/**
 * What a file is that is handed in by mistake, told by its content. Signatures are those of the formats' own
 * specifications, from memory; the words name kinds, never products.
 */

interface Kind {
  /** `This is …`. */
  readonly what: string;
  /** Bytes at a place, from 0; Latin-1. */
  readonly signs: readonly (readonly [at: number, text: string])[];
  readonly advice?: string;
}

const EXPORT =
  'What is needed is the music itself: in your notation program choose export, then MusicXML (.musicxml or .mxl).';
const MIDI_ADVICE = `MIDI says which keys were pressed, not how the notes are spelled (F sharp or G flat), so harmony can’t be judged from it. ${EXPORT}`;
const NATIVE = 'a notation program’s own file, which only that program can read';

const KINDS: readonly Kind[] = [
  { what: 'a PDF document', signs: [[0, '%PDF']] },
  { what: 'a picture', signs: [[0, '\x89PNG\r\n']] },
  { what: 'a picture', signs: [[0, '\xff\xd8\xff']] },
  { what: 'a picture', signs: [[0, 'GIF8']] },
  {
    what: 'a picture',
    signs: [
      [0, 'BM'],
      [6, '\0\0\0\0'],
    ],
  },
  { what: 'a picture', signs: [[0, 'II*\0']] },
  { what: 'a picture', signs: [[0, 'MM\0*']] },
  {
    what: 'a picture',
    signs: [
      [0, 'RIFF'],
      [8, 'WEBP'],
    ],
  },
  { what: 'a picture', signs: [[4, 'ftyphei']] },
  { what: 'a picture', signs: [[4, 'ftypmif1']] },
  { what: 'a picture', signs: [[4, 'ftypavif']] },
  { what: 'a MIDI file', signs: [[0, 'MThd']], advice: MIDI_ADVICE },
  {
    what: 'a MIDI file',
    signs: [
      [0, 'RIFF'],
      [8, 'RMID'],
    ],
    advice: MIDI_ADVICE,
  },
  {
    what: 'a sound recording',
    signs: [
      [0, 'RIFF'],
      [8, 'WAVE'],
    ],
  },
  { what: 'a sound recording', signs: [[0, 'ID3']] },
  { what: 'a sound recording', signs: [[0, '\xff\xfb']] },
  { what: 'a sound recording', signs: [[0, '\xff\xf3']] },
  { what: 'a sound recording', signs: [[0, 'OggS']] },
  { what: 'a sound recording', signs: [[0, 'fLaC']] },
  {
    what: 'a sound recording',
    signs: [
      [0, 'FORM'],
      [8, 'AIF'],
    ],
  },
  { what: 'a sound recording', signs: [[4, 'ftypM4A']] },
  { what: 'a film', signs: [[4, 'ftyp']] },
  { what: 'a film', signs: [[0, '\x1aE\xdf\xa3']] },
  { what: 'a word-processor document', signs: [[0, '\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1']] },
  { what: 'a word-processor document', signs: [[0, '{\\rtf']] },
  { what: 'a compressed archive of another kind than MusicXML uses', signs: [[0, '7z\xbc\xaf\x27\x1c']] },
  { what: 'a compressed archive of another kind than MusicXML uses', signs: [[0, 'Rar!']] },
  { what: 'a compressed archive of another kind than MusicXML uses', signs: [[0, '\x1f\x8b']] },
  {
    what: 'a program, not a score',
    signs: [
      [0, 'MZ'],
      [2, '\x90\0'],
    ],
  },
  { what: 'a program, not a score', signs: [[0, '\x7fELF']] },
  { what: 'a database', signs: [[0, 'SQLite format 3\0']] },
  { what: NATIVE, signs: [[0, '\x0fSIB']] },
  { what: NATIVE, signs: [[0, 'ENIGMA']] },
  { what: NATIVE, signs: [[0, '[Note']] },
];

/** The sentence for a file that is known to be something else; undefined where it may be an exercise. */
export function wrongFile(bytes: Uint8Array): string | undefined {
  const kind = KINDS.find(({ signs }) => signs.every(([at, text]) => holdsAt(bytes, at, text)));
  if (kind !== undefined) return sentence(kind.what, kind.advice);
  return undefined;
}

/** What a zip archive is that holds no MusicXML, told by the names in it. */
export function wrongArchive(names: readonly string[]): string {
  const has = (pattern: RegExp) => names.some((name) => pattern.test(name));
  if (has(/^word\//i) || (has(/^content\.xml$/i) && has(/^(mimetype|meta\.xml|META-INF\/manifest\.xml)$/i)))
    return sentence('a word-processor document');
  if (has(/^(xl|ppt)\//i)) return sentence('a spreadsheet or a set of slides');
  if (has(/\.(mscx|mscz|sib|musx)$/i) || has(/^(score_style\.mss|score\.dat|scorelibrary\.dtn)$/i)) {
    return sentence(NATIVE);
  }
  if (has(/^index\/.*\.iwa$|^index\.zip$/i)) return sentence('a word-processor document');
  const scores = names.filter((name) => /\.(musicxml|xml|mxl|txt)$/i.test(name)).length;
  const what = scores > 1 ? `a zipped folder with ${scores} files that may be scores` : 'a zipped folder';
  return `This is ${what}, not one score. Unzip it and open the score in it; a whole stack of scripts is for the marking desk. ${EXPORT}`;
}

/** Markup that is no MusicXML, told by its outermost element; undefined for one that says nothing. */
export function wrongMarkup(root: string): string | undefined {
  if (root === 'html' || root === 'HTML') return sentence('a web page');
  if (root === 'mei') return sentence('a score in another language for music, MEI');
  if (/^mus\w+score$|^gpif$/i.test(root)) return sentence(NATIVE);
  if (/^svg$/i.test(root)) return sentence('a picture (its outermost element is "svg")');
  if (/^(plist|office:document)$/i.test(root)) return sentence('a document of another program');
  return undefined;
}

/** A web page shows itself at its head, and seldom is XML to the end. */
export function isWebPage(text: string): boolean {
  const head = text.slice(0, 1000).toLowerCase();
  return !head.includes('<score-') && /<!doctype html|<html[\s>]/.test(head);
}

function sentence(what: string, advice = EXPORT): string {
  return `This is ${what}, not a score that can be read. ${advice}`;
}

function holdsAt(bytes: Uint8Array, at: number, text: string): boolean {
  if (bytes.length < at + text.length) return false;
  for (let i = 0; i < text.length; i++) if (bytes[at + i] !== text.charCodeAt(i)) return false;
  return true;
}
