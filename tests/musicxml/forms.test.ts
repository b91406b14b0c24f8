import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type ReadOptions, readMusicXml, writeMxl } from '../../src/musicxml/index.ts';
import { readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { type Form, inForm } from '../support/forms.ts';

/** An own melody with an upbeat, ties over a barline, quavers, an accidental and a change of metre. */
const FINISHED = readNotation(`title: The mill wheel
key: G major
metre: 4/4
upbeat: 1

S: G4 | B4 A4 G4 D5 | C5 B4 A4! B4 | (D5 C5) B4*2 A4 | G4*3! G4 | A4 B4 C5 A4 | B4*4_ | B4 A4 G4! |
A: D4 | D4 (D4 E4) D4 G4 | G4 G4 F#4! G4 | G4 G4*2 F#4 | D4*3! D4 | F#4 G4 G4 F#4 | G4*4 | G4 F#4 D4! |
T: B3 | G3 F#3 G3 B3 | E4 D4 D4! D4 | D4 D4*2 C4 | B3*3! B3 | D4 D4 E4 D4 | D4*4 | D4 C4 B3! |
B: G3 | G3 D3 B2 G2 | C3 G3 D3! G3 | B2 G2*2 D3 | G2*3! G3 | D3 G3 C3 D3 | G3*4 | D3 D3 G2! |
`).score;

/** Tune and bass are written, alto and tenor only to the second bar, the alto with a hole. */
const UNFINISHED = readNotation(`title: Half a bridge
key: D major
metre: 3/4

S: D5 C#5 B4 | A4*2 A4! | B4 C#5 D5 | E5*2 D5! | C#5 D5 E5 | D5*3! |
A: A4 A4 F#4 | E4 ? E4! |
T: F#4 E4 D4 | C#4*2 C#4! |
B: D3 A3 B3 | A3*2 A2! | G2 A2 B2 | A2*2 B2! | A2 F#2 A2 | D3*3! |
`).score;

/** Every voice moves with its neighbour, so that chords can stand for both. */
const TOGETHER = readNotation(`title: Side by side
key: F major
metre: 3/4

S: A4 Bb4 C5 | D5*2 C5! | Bb4 A4 G4 | F4*3! |
A: F4 G4 A4 | Bb4*2 A4! | G4 F4 E4 | C4*3! |
T: C4 D4 F4 | F4*2 F4! | D4 C4 Bb3 | A3*3! |
B: F3 G3 F3 | Bb2*2 F3! | G3 A3 C3 | F2*3! |
`).score;

const FOUR: Form['parts'] = [[['S']], [['A']], [['T']], [['B']]];
const NAMES = ['Soprano', 'Alto', 'Tenor', 'Bass'];
const PAIRS: Form['parts'] = [[['S', 'A']], [['T', 'B']]];
const GRAND: Form['parts'] = [
  [
    ['S', 'A'],
    ['T', 'B'],
  ],
];
const two = (voice: VoiceName) => (voice === 'S' || voice === 'T' ? '1' : '2');

function music(score: Score): Omit<Score, 'remarks'> {
  const { remarks: _remarks, ...rest } = score;
  return rest;
}

function read(file: string | Uint8Array, options?: ReadOptions) {
  const reading = readMusicXml(typeof file === 'string' ? strToU8(file) : file, options);
  if (!reading.ok) throw new Error(`${reading.message} (line ${reading.line}, column ${reading.column})`);
  return reading;
}

function utf16(text: string, order: 'le' | 'be', mark: boolean): Uint8Array {
  const bytes = Buffer.from((mark ? '\uFEFF' : '') + text, 'utf16le');
  return new Uint8Array(order === 'le' ? bytes : bytes.swap16());
}

interface Shape extends Form {
  readonly called: string;
  /** Words of the remark that a person must see. */
  readonly says?: RegExp;
}

const plainNote = (step: string, octave: number, duration: number) =>
  `<note><pitch><step>${step}</step><octave>${octave}</octave></pitch><duration>${duration}</duration><voice>1</voice></note>`;

const FORMS: readonly Shape[] = [
  { called: 'four named parts', parts: FOUR, names: NAMES },
  {
    called: 'MusicXML 1.0 with its document type',
    parts: FOUR,
    names: NAMES,
    head: '<?xml version="1.0" standalone="no"?>\n<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 1.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">',
  },
  { called: 'timewise', parts: FOUR, names: NAMES, timewise: true },
  { called: 'parts with other words', parts: FOUR, names: ['Discant', 'Altus', 'Ténor', 'Baß'] },
  { called: 'parts with letters', parts: FOUR, names: ['S.', 'A.', 'T.', 'B.'] },
  { called: 'Cyrillic names', parts: FOUR, names: ['Сопрано', 'Альт', 'Тенор', 'Бас'] },
  {
    called: 'named parts upside down',
    parts: [[['B']], [['T']], [['A']], [['S']]],
    names: ['Basso', 'Tenore', 'Contralto', 'Canto'],
  },
  {
    called: 'parts without names',
    parts: FOUR,
    says: /not named after the voices; they were taken from the top/,
  },
  {
    called: 'parts without names, upside down',
    parts: [[['B']], [['T']], [['A']], [['S']]],
    says: /told apart by height: soprano from part 4/,
  },
  { called: 'one part of four staves', parts: [[['S'], ['A'], ['T'], ['B']]], says: /taken from the top/ },
  { called: 'closed score in two parts', parts: PAIRS, number: two, stems: true },
  {
    called: 'closed score with named parts',
    parts: PAIRS,
    names: ['Soprano / Alto', 'Tenor, Bass'],
    number: two,
    stems: true,
  },
  {
    called: 'closed score in one part',
    parts: GRAND,
    names: ['Piano'],
    number: (v) => ({ S: '1', A: '2', T: '5', B: '6' })[v],
    stems: true,
  },
  { called: 'closed score without stems', parts: GRAND, number: two },
  { called: 'closed score without voice numbers', parts: GRAND, number: () => undefined },
  {
    called: 'voice numbers that run on over all staves',
    parts: FOUR,
    names: NAMES,
    number: (v) => String(VOICES.indexOf(v) + 1),
  },
  {
    called: 'voices that change their number from bar to bar',
    parts: GRAND,
    number: (v, bar) => String(VOICES.indexOf(v) + 1 + 4 * bar),
    stems: true,
  },
  {
    called: 'voices that swap their numbers',
    parts: GRAND,
    number: (v, bar) => String(bar % 2 === 0 ? Number(two(v)) : 3 - Number(two(v))),
    stems: true,
  },
  {
    called: 'three staves, the men sharing one',
    parts: [[['S']], [['A']], [['T', 'B']]],
    number: two,
    names: ['Soprano', 'Alto', 'Men'],
    stems: true,
  },
  { called: 'other divisions', parts: FOUR, names: NAMES, divisions: 480 },
  {
    called: 'a tenor written an octave up',
    parts: FOUR,
    names: NAMES,
    transpose: { voice: 'T', steps: -7, semitones: -12 },
  },
  {
    called: 'an alto in B flat',
    parts: FOUR,
    names: NAMES,
    transpose: { voice: 'A', steps: -1, semitones: -2 },
  },
  {
    called: 'a soprano in E flat',
    parts: FOUR,
    names: NAMES,
    transpose: { voice: 'S', steps: 2, semitones: 3 },
  },
  { called: 'inverted fermatas', parts: FOUR, names: NAMES, fermatas: 'inverted' },
  {
    called: 'a keyboard reduction below',
    parts: FOUR,
    names: NAMES,
    extra: [{ name: 'Piano', measure: (_bar, full) => plainNote('C', 3, full) }],
    says: /The part "Piano" was set aside/,
  },
  {
    called: 'an empty fifth part',
    parts: FOUR,
    extra: [
      { name: '', measure: (_bar, full) => `<note><rest measure="yes"/><duration>${full}</duration></note>` },
    ],
    says: /Part 5 was set aside: it is empty/,
  },
  {
    called: 'the given melody once more above',
    parts: [[['S']], ...FOUR],
    names: ['Given melody', ...NAMES],
    says: /The part "Given melody" was set aside/,
  },
  {
    called: 'a closed score below the four voices',
    parts: [
      ...FOUR,
      [
        ['S', 'A'],
        ['T', 'B'],
      ],
    ],
    number: (v) => two(v),
    says: /Part 5 was set aside/,
  },
  {
    called: 'cue notes and hidden notes among the others',
    parts: FOUR,
    names: NAMES,
    after: () =>
      '<backup><duration>4</duration></backup><note><cue/><pitch><step>C</step><octave>6</octave></pitch><duration>4</duration><voice>2</voice></note><backup><duration>4</duration></backup><note print-object="no"><pitch><step>C</step><octave>6</octave></pitch><duration>4</duration><voice>3</voice></note>',
  },
  {
    called: 'words, chord names and dynamics',
    parts: FOUR,
    names: NAMES,
    before: () =>
      '<direction><direction-type><words>dolce</words></direction-type></direction><harmony><root><root-step>G</root-step></root><kind>major</kind></harmony><print new-system="yes"/>',
  },
];

describe('one exercise in every form gives one score', () => {
  it.each(FORMS)('finished: $called', (form) => {
    const { score, assignment } = read(inForm(FINISHED, form));
    expect(music(score)).toEqual(music(FINISHED));
    if (form.says) expect(score.remarks.map((remark) => remark.message).join(' ')).toMatch(form.says);
    else expect(score.remarks).toEqual([]);
    const closed = form.parts.length < 4 && form.parts.flat().length < 4;
    expect(assignment.layout).toBe(closed ? 'closed score' : 'four staves');
    expect(VOICES.map((voice) => assignment.lines.find((line) => line.given === voice)?.given)).toEqual([
      ...VOICES,
    ]);
  });

  it.each(FORMS.filter((form) => !form.extra && form.transpose === undefined))(
    'half finished: $called',
    (form) => {
      for (const gaps of ['rests', 'whole-bar rests', 'hidden rests', 'forward'] as const) {
        expect(music(read(inForm(UNFINISHED, { ...form, gaps })).score), gaps).toEqual(music(UNFINISHED));
      }
    },
  );

  it.each(['implicit 0', 'plain 0', 'filled'] as const)('an upbeat in the form: %s', (upbeat) => {
    expect(music(read(inForm(FINISHED, { parts: FOUR, names: NAMES, upbeat })).score)).toEqual(
      music(FINISHED),
    );
    expect(music(read(inForm(FINISHED, { parts: GRAND, number: two, stems: true, upbeat })).score)).toEqual(
      music(FINISHED),
    );
  });

  it('an upbeat that is numbered 1 keeps the number that the file gives', () => {
    const { score } = read(inForm(FINISHED, { parts: FOUR, names: NAMES, upbeat: 'implicit 1' }));
    expect(score.bars[0]).toMatchObject({ number: '1', offset: 3 * 10_080 });
    expect(score.voices).toEqual(FINISHED.voices);
  });

  it('chords for two voices on each staff', () => {
    for (const parts of [PAIRS, GRAND]) {
      const { score, assignment } = read(inForm(TOGETHER, { parts, chords: true }));
      expect(music(score)).toEqual(music(TOGETHER));
      expect(assignment.guessed).toBe(true);
      expect(assignment.how).toMatch(/as chords; they were told apart by their stems, then by height/);
    }
  });

  it('chords where the voices move together and two voices elsewhere', () => {
    const { score } = read(inForm(FINISHED, { parts: GRAND, number: two, chords: true, stems: true }));
    expect(music(score)).toEqual(music(FINISHED));
  });

  it('a fermata over a barline is one on each of the notes that end there', () => {
    const { score } = read(inForm(TOGETHER, { parts: FOUR, names: NAMES, fermatas: 'barline' }));
    expect(music(score)).toEqual(music(TOGETHER));
  });

  it.each([
    ['UTF-8 with a mark', (xml: string) => strToU8(`\uFEFF${xml}`)],
    ['UTF-16, low byte first', (xml: string) => utf16(xml.replace('UTF-8', 'UTF-16'), 'le', true)],
    ['UTF-16, high byte first', (xml: string) => utf16(xml.replace('UTF-8', 'UTF-16'), 'be', true)],
    ['UTF-16 without a mark', (xml: string) => utf16(xml.replace('UTF-8', 'UTF-16'), 'le', false)],
    [
      'UTF-16 without a mark, high byte first',
      (xml: string) => utf16(xml.replace('UTF-8', 'UTF-16'), 'be', false),
    ],
    ['UTF-8 that calls itself UTF-16', (xml: string) => strToU8(xml.replace('UTF-8', 'UTF-16'))],
    ['Latin-1', (xml: string) => new Uint8Array(Buffer.from(xml.replace('UTF-8', 'ISO-8859-1'), 'latin1'))],
    ['blank lines before it', (xml: string) => strToU8(`\n\n ${xml}`)],
    ['an archive', (xml: string) => archive({ 'music/score.xml': strToU8(xml) }, 'music/score.xml')],
    [
      'an archive of UTF-16',
      (xml: string) => archive({ 's.xml': utf16(xml.replace('UTF-8', 'UTF-16'), 'le', true) }, 's.xml'),
    ],
    ['an archive without a container', (xml: string) => zipSync({ 'score.musicxml': strToU8(xml) })],
    [
      'an archive that is not packed',
      (xml: string) => zipSync({ 'score.musicxml': strToU8(xml) }, { level: 0 }),
    ],
  ])('in the encoding: %s', (_name, encode) => {
    const named = { ...FINISHED, title: 'Übermut & Fluß' };
    const xml = inForm({ ...named, title: 'Übermut &amp; Fluß' }, { parts: FOUR, names: NAMES });
    expect(music(read(encode(xml)).score)).toEqual(music(named));
  });

  it('gives the same review whatever the form', () => {
    const wanted = summary(FINISHED);
    for (const form of FORMS)
      expect(summary(read(inForm(FINISHED, form)).score), form.called).toEqual(wanted);
    expect(summary(read(writeMxl(FINISHED, { layout: 'closed score' })).score)).toEqual(wanted);
  });
});

function summary(score: Score) {
  const review = reviewScore(score, CHORALE);
  return review.findings.map((finding) => `${finding.id} ${finding.severity} ${finding.message}`);
}

function archive(files: Record<string, Uint8Array>, path: string): Uint8Array {
  const container = `<?xml version="1.0"?><container><rootfiles><rootfile full-path="${path}"/></rootfiles></container>`;
  return zipSync({ 'META-INF/container.xml': strToU8(container), ...files });
}
