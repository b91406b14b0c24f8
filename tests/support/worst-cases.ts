/**
 * The hardest files within the limits, a family for each door and each way of being hard: long, dense, deep, repetitive,
 * all findings at once, all fermatas, all keys, all figures.
 */
import { zipSync } from 'fflate';
import { ABC_LIMITS } from '../../src/abc/limits.ts';
import { LIMITS } from '../../src/musicxml/limits.ts';
import { NOTATION_LIMITS } from '../../src/notation/index.ts';
import { VOICES, type VoiceName } from '../../src/score/score.ts';

export interface WorstCase {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const OCTAVE: Readonly<Record<VoiceName, number>> = { S: 5, A: 4, T: 4, B: 3 };
const LETTERS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];
/** Four bars that harmonise a scale, round and round. */
const PLAIN: Readonly<Record<VoiceName, readonly string[]>> = {
  S: ['G4 G4 A4 G4', 'C5 B4 A4 G4', 'F4 E4 D4 C4', 'E4 D4 D4 C4'],
  A: ['D4 E4 C4 D4', 'G4 G4 F4 E4', 'C4 C4 B3 G3', 'C4 B3 B3 G3'],
  T: ['B3 C4 F3 B3', 'E4 D4 C4 C4', 'A3 G3 G3 E3', 'G3 G3 F3 E3'],
  B: ['G3 C3 F3 G3', 'C3 G3 F3 C3', 'F3 C3 G3 C3', 'C3 G2 G2 C3'],
};

/** The same numbers each time: 0 up to 1. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31;
    return state / 2 ** 31;
  };
}

/** A text of so many bars; `write` gives what a voice has in one of them. */
function inBars(bars: number, write: (voice: VoiceName, bar: number) => string): string {
  return VOICES.map(
    (voice) => `${voice}: ${Array.from({ length: bars }, (_, bar) => write(voice, bar)).join(' | ')}`,
  ).join('\n');
}

/** Two minims a bar, every bar marked: the text by which the growth of a review is measured, in any length. */
export function fermatasInEachBar(bars: number): string {
  return inBars(bars, (voice, bar) => {
    const [first, , third] = PLAIN[voice][bar % 4]!.split(' ');
    return `${first}*2 ${third}*2!`;
  });
}

/** Whatever there is to find, in any length: letters, octaves and accidentals at random; so many notes a bar. */
export function everythingWrong(bars: number, notes: 2 | 4 = 2): string {
  const next = chance(7);
  const pick = (list: readonly string[]) => list[Math.floor(next() * list.length)]!;
  return inBars(bars, (voice) =>
    Array.from(
      { length: notes },
      () =>
        `${pick(LETTERS)}${pick(['', '#', 'b'])}${OCTAVE[voice] - Math.floor(next() * 2)}${notes === 2 ? '*2' : ''}`,
    ).join(' '),
  );
}

const BARS = NOTATION_LIMITS.events / 4;

/** Texts as long as may be: each is a review of as many notes as a voice may have, or as many signs as are read. */
const TEXTS: Readonly<Record<string, () => string>> = {
  long: () => inBars(BARS, (voice, bar) => PLAIN[voice][bar % 4]!),
  'a fermata in each bar': () => inBars(BARS, (voice, bar) => `${PLAIN[voice][bar % 4]}!`),
  'a fermata on each note': () =>
    inBars(BARS, (voice, bar) => PLAIN[voice][bar % 4]!.replaceAll(/\d/g, (octave) => `${octave}!`)),
  'everything wrong': () => everythingWrong(BARS, 4),
  'one note': () => inBars(BARS, (voice) => `C${OCTAVE[voice]} C C C`),
  'two notes in turn': () => inBars(BARS, (voice) => `C${OCTAVE[voice]} D C D`),
  'parallel everywhere': () => {
    const next = chance(3);
    const line = Array.from({ length: 4 * BARS }, () => LETTERS[Math.floor(next() * 7)]!);
    return inBars(BARS, (voice, bar) =>
      line
        .slice(4 * bar, 4 * bar + 4)
        .map((letter) => letter + OCTAVE[voice])
        .join(' '),
    );
  },
  'rests in every other beat': () =>
    inBars(BARS, (voice, bar) => PLAIN[voice][bar % 4]!.replaceAll(/ \S+ /g, ' r ')),
  'mostly not written': () =>
    inBars(BARS, (voice, bar) =>
      voice === 'S' ? PLAIN.S[bar % 4]! : bar % 2 === 0 ? '? ? ? ?' : 'C3 ? C3 ?',
    ),
  'a held bass': () =>
    inBars(BARS, (voice, bar) =>
      voice !== 'B' ? PLAIN[voice][bar % 4]! : bar === 0 ? 'C3 = = =' : '= = = =',
    ),
  'a key in each bar': () =>
    Array.from(
      { length: BARS },
      (_, bar) =>
        `key: ${['C major', 'F# minor', '7 flats', '7 sharps'][bar % 4]}\nmetre: ${(bar % 2) + 3}/4\n` +
        inBars(1, (voice) =>
          PLAIN[voice]
            [bar % 4]!.split(' ')
            .slice(0, (bar % 2) + 3)
            .join(' '),
        ),
    ).join('\n'),
  'sixteen notes a beat': () => inBars(31, (voice) => beatsOf(voice, 16)),
  'all in one beat': () => inBars(1, (voice) => `(${lineOf(voice, 2_016 / 2)})`),
  'beats divided by 3, 4, 5 and 7': () =>
    inBars(70, (voice) => beatsOf(voice, { S: 3, A: 4, T: 5, B: 7 }[voice])),
  'bars of one note': () =>
    `metre: 1/8\n${inBars(NOTATION_LIMITS.bars - 1, (voice, bar) => `${LETTERS[(bar * 3) % 7]}${OCTAVE[voice]}`)}`,
  'one bar': () => VOICES.map((voice) => `${voice}: ${lineOf(voice, NOTATION_LIMITS.events)}`).join('\n'),
  'a letter and spaces': () => `A${' '.repeat(NOTATION_LIMITS.characters - 1)}`,
  spaces: () => ' '.repeat(NOTATION_LIMITS.characters),
  'empty lines': () => '\n'.repeat(NOTATION_LIMITS.characters),
  brackets: () => `S: ${'('.repeat(NOTATION_LIMITS.characters - 3)}`,
  'a bracket of everything': () => `S: (${'C4 '.repeat(NOTATION_LIMITS.characters / 3 - 2)})`,
  lengths: () => `S: C4${'*9'.repeat(NOTATION_LIMITS.characters / 2 - 3)}`,
  barlines: () => `S: ${'|'.repeat(NOTATION_LIMITS.characters - 3)}`,
  'held for ever': () => `S: C4 ${'= '.repeat(NOTATION_LIMITS.characters / 2 - 4)}`,
  'held over empty bars': () =>
    `S: C4 ${'| '.repeat(900)}${'= | '.repeat(NOTATION_LIMITS.characters / 4 - 600)}`,
  'voices that begin and stop': () => 'S:C\nS:\nA:\n'.repeat(NOTATION_LIMITS.characters / 12),
  headers: () => 'key: C major\nupbeat: 1\n'.repeat(NOTATION_LIMITS.characters / 24),
  'a title': () => `title: ${'candidate '.repeat(NOTATION_LIMITS.characters / 10 - 1)}`,
  nonsense: () => 'x'.repeat(NOTATION_LIMITS.characters),
};

function lineOf(voice: VoiceName, notes: number): string {
  const next = chance(voice.charCodeAt(0));
  return Array.from(
    { length: notes },
    () => `${LETTERS[Math.floor(next() * 7)]}${next() < 0.2 ? '#' : ''}${OCTAVE[voice]}`,
  ).join(' ');
}

function beatsOf(voice: VoiceName, notes: number): string {
  return Array.from({ length: 4 }, () => `(${lineOf(voice, notes)})`).join(' ');
}

/** Notes in each of four parts, a whole number of twos. */
const EACH = 2 * Math.floor(LIMITS.voiceNotes / 8);

/** MusicXML at the reader's limits: as many notes as are judged, or as much else as is read. */
const XML: Readonly<Record<string, () => string>> = {
  'MusicXML, long': () => partwise(4, repeated(EACH / 2, notes(2, 2))),
  'MusicXML, a fermata on each note': () => partwise(4, repeated(EACH / 2, notes(2, 2, FERMATA))),
  'MusicXML, dense': () => partwise(4, repeated(Math.floor(EACH / 48), notes(48, 1)), 12),
  'MusicXML, all in a beat': () => partwise(4, repeated(2, notes(EACH / 2, 1)), 480),
  'MusicXML, figures': () => partwise(4, repeated(EACH / 4, FIGURES + notes(4, 1))),
  'MusicXML, keys': () =>
    partwise(
      4,
      Array.from({ length: EACH / 2 }, (_, bar) => key((bar % 15) - 7) + notes(2, 2)),
    ),
  'MusicXML, chords': () =>
    partwise(2, repeated(EACH / 4, notes(4, 1).replaceAll('</note>', `</note>${CHORD_NOTE}`))),
  'MusicXML, many parts': () => partwise(LIMITS.parts, repeated(100, notes(4, 1))),
  'MusicXML, backwards and forwards': () => partwise(4, repeated(200, TO_AND_FRO.repeat(40) + notes(4, 1))),
  'MusicXML, deep': () => `<score-partwise>${'<a>'.repeat(LIMITS.depth + 2)}`,
  'MusicXML, elements': () => `<score-partwise>${'<a/>'.repeat(LIMITS.elements - 1)}</score-partwise>`,
  'MusicXML, attributes': () =>
    `<score-partwise ${Array.from({ length: 100_000 }, (_, i) => `a${i}="1"`).join(' ')}/>`,
  'MusicXML, words': () => `<score-partwise>${'x'.repeat(3_900_000)}</score-partwise>`,
  'MusicXML, comments': () => `<score-partwise>${'<!-- - -->'.repeat(300_000)}</score-partwise>`,
  'MusicXML, a heading': () => `<?xml ${'encoding '.repeat(400_000)}`,
};

const TO_AND_FRO = '<backup><duration>1</duration></backup><forward><duration>1</duration></forward>';
const CHORD_NOTE =
  '<note><chord/><pitch><step>C</step><octave>5</octave></pitch><duration>1</duration></note>';
const FERMATA = '<notations><fermata/></notations>';
const FIGURES =
  `<figured-bass>${'<figure><figure-number>6</figure-number></figure>'.repeat(8)}</figured-bass>`.repeat(8);

function key(fifths: number): string {
  return `<attributes><key><fifths>${fifths}</fifths></key></attributes>`;
}

function notes(count: number, duration: number, more = ''): string {
  const next = chance(count + more.length);
  return Array.from(
    { length: count },
    () =>
      `<note><pitch><step>${LETTERS[Math.floor(next() * 7)]}</step><octave>4</octave></pitch><duration>${duration}</duration>${more}</note>`,
  ).join('');
}

function repeated(times: number, bar: string): string[] {
  return Array.from({ length: times }, () => bar);
}

/** The same bars in each part. */
function partwise(parts: number, bars: readonly string[], divisions = 1): string {
  const ids = Array.from({ length: parts }, (_, part) => `P${part}`);
  const list = ids.map((id) => `<score-part id="${id}"><part-name>${id}</part-name></score-part>`).join('');
  const measures = bars.map((content, bar) => {
    const first = bar === 0 ? `<attributes><divisions>${divisions}</divisions></attributes>` : '';
    return `<measure number="${bar + 1}">${first}${content}</measure>`;
  });
  const music = ids.map((id) => `<part id="${id}">${measures.join('')}</part>`);
  return `<score-partwise><part-list>${list}</part-list>${music.join('')}</score-partwise>`;
}

/** A tune in ABC as long as may be, of one thing again and again. */
function abc(of: string, length: number = ABC_LIMITS.text): string {
  const head = 'X:1\nM:4/4\nL:1/4\nK:C\n';
  return (head + of.repeat(length / of.length + 1)).slice(0, length - 1);
}

const ABC: Readonly<Record<string, () => string>> = {
  'ABC, notes': () => abc('CDEF|'),
  'ABC, chords': () => abc('[CE][DF]|'),
  'ABC, short notes': () => abc('C/4^D/4'),
  'ABC, lines': () => abc('C|\n'),
  'ABC, brackets': () => abc('['),
  'ABC, slurs': () => abc('('),
  'ABC, quotes': () => abc('"'),
  'ABC, decorations': () => abc('!'),
  'ABC, decorated notes': () => abc('!fermata!C'),
  'ABC, overlays': () => abc('&'),
  'ABC, grace notes': () =>
    abc('C|', ABC_LIMITS.text - ABC_LIMITS.graces) + '{'.repeat(ABC_LIMITS.graces - 1),
  'ABC, tuplets': () => abc('(3CCC|'),
  'ABC, ties': () => abc('C-'),
  'ABC, barlines': () => abc('|'),
  'ABC, words': () => `${abc('C ', ABC_LIMITS.text / 2)}\nw:${'a '.repeat(ABC_LIMITS.text / 4 - 8)}`,
  'ABC, fields': () => abc('T:a\n'),
  'ABC, directives': () => abc('%%x\n'),
  'ABC, keys': () => abc('[K:D]C|[K:C]'),
  'ABC, metres': () => abc('[M:3/4]C|[M:4/4]'),
  'ABC, voices': () => abc(Array.from({ length: ABC_LIMITS.voices }, (_, i) => `V:${i}\nC|\n`).join('')),
  'ABC, nothing it knows': () => abc('¿'),
  'ABC, bars of rest': () => abc('Z999|'),
  'ABC, lengths': () => abc('C9999|'),
};

/** Archives that unpack to more than is read, or hold more entries. */
const ARCHIVES: Readonly<Record<string, () => Uint8Array>> = {
  'archive, a bomb': () =>
    zipSync({ 'META-INF/container.xml': rootfile('a.xml'), 'a.xml': new Uint8Array(60_000_000) }),
  'archive, entries': () =>
    zipSync(Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`${i}.xml`, new Uint8Array(1)])), {
      level: 0,
    }),
  'archive, long MusicXML': () =>
    zipSync({ 'META-INF/container.xml': rootfile('a.xml'), 'a.xml': bytesOf(XML['MusicXML, long']!()) }),
};

function rootfile(path: string): Uint8Array {
  return bytesOf(`<container><rootfiles><rootfile full-path="${path}"/></rootfiles></container>`);
}

function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** Made one after the other, since each is large. */
export function* worstCases(): Generator<WorstCase> {
  for (const [name, text] of Object.entries({ ...TEXTS, ...XML, ...ABC }))
    yield { name, bytes: bytesOf(text()) };
  for (const [name, bytes] of Object.entries(ARCHIVES)) yield { name, bytes: bytes() };
}
