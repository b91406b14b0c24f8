/**
 * What each file of the shared half of the public MusicXML suite should give (R. Kainhofer, M. S. A. Cuthbert; MIT).
 * The values follow from each file's own description, not from what the reader makes of it. Pitches are sounding,
 * lengths in crotchets; `+` joins a chord, `( )` are grace notes, `-` is hidden, `~` tied on, `!` a fermata,
 * `?` a pitch no four-part score holds, `≈` a length no division reaches, `@` where a voice goes on.
 */
export interface SuiteCase {
  readonly file: string;
  /** What the file shows, in few words. */
  readonly shows: string;
  /** Notes of each part (of the parts listed), bar by bar. */
  readonly notes?: readonly string[];
  /** `bar index: metre`. */
  readonly metres?: string;
  /** `bar index@crotchet: sharps`, sounding. */
  readonly keys?: string;
  /** Numbers of the bars with `i` for implicit, length in crotchets, `b`/`f` repeats back and forward, `e` ending. */
  readonly bars?: string;
  readonly title?: string;
  readonly tempo?: number;
  /** Lyrics of the first part: verses joined by `/`, syllables by a space. */
  readonly lyrics?: string;
  readonly partNames?: string;
  /** What the door says: a refusal (its sentence holds these words), or the pitches of each voice. */
  readonly verdict: RegExp | Readonly<Record<'S' | 'A' | 'T' | 'B', string>>;
}

const MELODY = /^This is a single melody: one part: .* Needed are soprano, alto, tenor and bass/;
const EMPTY = /^There are no notes in the file: .* Needed are/;
const NOT_FOUR = /^This is not a four-part exercise\. It has .* Needed are/;
const four = (bar: string, times: number) => Array.from({ length: times }, () => bar).join(' | ');

export const SUITE_CASES: readonly SuiteCase[] = [
  {
    file: '01a-Pitches-Pitches.xml',
    shows: 'naturals from G2 to C7, then sharps, then flats, then double and cautionary accidentals',
    notes: [
      'G2:1 A2:1 B2:1 C3:1 | D3:1 E3:1 F3:1 G3:1 | A3:1 B3:1 C4:1 D4:1 | E4:1 F4:1 G4:1 A4:1 | B4:1 C5:1 D5:1 E5:1 | F5:1 G5:1 A5:1 B5:1 | C6:1 D6:1 E6:1 F6:1 | G6:1 A6:1 B6:1 C7:1 | ' +
        'G#2:1 A#2:1 B#2:1 C#3:1 | D#3:1 E#3:1 F#3:1 G#3:1 | A#3:1 B#3:1 C#4:1 D#4:1 | E#4:1 F#4:1 G#4:1 A#4:1 | B#4:1 C#5:1 D#5:1 E#5:1 | F#5:1 G#5:1 A#5:1 B#5:1 | C#6:1 D#6:1 E#6:1 F#6:1 | G#6:1 A#6:1 B#6:1 C#7:1 | ' +
        'Gb2:1 Ab2:1 Bb2:1 Cb3:1 | Db3:1 Eb3:1 Fb3:1 Gb3:1 | Ab3:1 Bb3:1 Cb4:1 Db4:1 | Eb4:1 Fb4:1 Gb4:1 Ab4:1 | Bb4:1 Cb5:1 Db5:1 Eb5:1 | Fb5:1 Gb5:1 Ab5:1 Bb5:1 | Cb6:1 Db6:1 Eb6:1 Fb6:1 | Gb6:1 Ab6:1 Bb6:1 Cb7:1 | ' +
        'E4:1 F4:1 G4:1 A4:1 | B4:1 C5:1 D5:1 E5:1 | C##5:1 Cbb5:1 C#5:1 C#5:1 | C#5:1 C#5:1',
    ],
    title: 'Pitches and accidentals',
    verdict: MELODY,
  },
  {
    file: '01c-Pitches-NoVoiceElement.xml',
    shows: 'a note without a voice number',
    notes: ['G4:4'],
    lyrics: 'A',
    verdict: MELODY,
  },
  {
    file: '01e-Pitches-EditorialCautionaryAccidentals.xml',
    shows: 'editorial and cautionary accidentals change nothing: flats, sharps, double flats, double sharps',
    notes: [
      'Db4:1 Eb4:1 Fb4:1 Gb4:1 | C#4:1 D#4:1 E#4:1 F#4:1 | Dbb4:1 Ebb4:1 Fbb4:1 Gbb4:1 | C##4:1 D##4:1 E##4:1 F##4:1',
    ],
    verdict: MELODY,
  },
  {
    file: '01f-Pitches-ParenthesizedMicrotoneAccidentals.xml',
    shows: 'quarter tones are told apart from semitones (bars of ½, 1, −½… and 1½ semitones)',
    notes: [
      'D4:1? D4:1? D4:1? D4:1? | C#4:1 C#4:1 C#4:1 C#4:1 | Db4:1? Db4:1? Db4:1? Db4:1? | C##4:1? C##4:1? C##4:1? C##4:1?',
    ],
    verdict: MELODY,
  },
  {
    file: '01h-Pitches-TurkishPersian.musicxml',
    shows: 'fourteen kinds of accidental signs on G',
    notes: [four('G4:1 G4:1', 7)],
    verdict: MELODY,
  },
  {
    file: '02b-Rests-PitchedRests.xml',
    shows: 'five rests, four of them placed at a pitch, are rests all the same',
    notes: ['r:1 r:1 r:1 r:1 r:1'],
    verdict: EMPTY,
  },
  {
    file: '02d-Rests-Multimeasure-TimeSignatures.xml',
    shows: 'rests of several bars last as many bars of each metre',
    notes: ['r:4 | r:4 | r:3 | r:3 | r:3 | r:2 | r:2 | r:4 | r:4 | C5:4'],
    metres: '0:4/4 2:3/4 5:2/4 7:4/4',
    verdict: MELODY,
  },
  {
    file: '03aa-Rhythm-Durations.xml',
    shows: 'long to sixty-fourth, plain, dotted and doubly dotted',
    notes: [
      'C5:8 C5:4 C5:2 C5:1 C5:1/2 C5:1/4 C5:1/8 C5:1/16 C5:1/16 | C5:12 C5:6 C5:3 C5:3/2 C5:3/4 C5:3/8 C5:3/16 C5:3/32 C5:3/32 | C5:7 C5:7/2 C5:7/4 C5:7/8 C5:7/16 C5:7/32 C5:7/32',
    ],
    verdict: MELODY,
  },
  {
    file: '03b-Rhythm-Backup.xml',
    shows: 'the second voice begins on the second beat',
    notes: ['C4:1 C4:1 @1 A3:1 A3:1'],
    verdict: NOT_FOUR,
  },
  {
    file: '03d-Rhythm-DottedDurations-Factors.xml',
    shows: 'rests as long as notes, 5/16 and 9/8 among them',
    notes: [
      'C5:1/2 | r:1/2 | C5:1 | r:1 | C5:3 | r:3 | C5:4 | r:4 | C5:1 C5:1/4 | r:5/4 | C5:7/2 | r:7/2 | C5:4 C5:1/2 | r:9/2 | C5:31/2 | r:31/2 | C5:4',
    ],
    verdict: MELODY,
  },
  {
    file: '11a-TimeSignatures.xml',
    shows: 'eleven metres',
    metres: '0:2/2 1:4/4 2:2/2 3:3/2 4:2/4 5:3/4 6:4/4 7:5/4 8:3/8 9:6/8 10:12/8',
    notes: ['C5:4 | C5:4 | C5:4 | C5:6 | C5:2 | C5:3 | C5:4 | C5:4~ C5:1 | C5:3/2 | C5:3 | C5:6'],
    verdict: MELODY,
  },
  {
    file: '11c-TimeSignatures-CompoundSimple.xml',
    shows: '(3+2)/8 is as long as 5/8, (5+3+1)/4 as 9/4',
    metres: '0:5/8 1:9/4',
    verdict: MELODY,
  },
  {
    file: '11e-TimeSignatures-CompoundMixed.xml',
    shows: '(3+2)/8 + 3/4 is as long as 11/8',
    metres: '0:11/8',
    verdict: MELODY,
  },
  {
    file: '11g-TimeSignatures-SingleNumber.xml',
    shows: '3/8 printed as a single figure',
    metres: '0:3/8',
    verdict: MELODY,
  },
  {
    file: '12aa-Clefs_Pitch_Traditional.xml',
    shows: 'middle C in four clefs',
    notes: ['C4:4 | C4:4 | C4:4 | C4:4'],
    verdict: MELODY,
  },
  {
    file: '12ac-Clefs-TAB-Switch.xml',
    shows: 'a staff that turns into a tablature',
    notes: ['C4:4 | C4:4 | C4:4'],
    verdict: /a tablature/,
  },
  {
    file: '12b-Clefs-NoKeyOrClef.xml',
    shows: 'no clef and no key: 4/4 all the same',
    metres: '0:4/4',
    keys: '',
    notes: ['C4:4 | C4:4'],
    verdict: MELODY,
  },
  {
    file: '13aa-KeySignatures-Extreme.xml',
    shows: 'seven flats and seven sharps are keys; eight to eleven are none',
    keys: '0@0:0 1@0:0 2@0:0 3@0:0 4@0:-7 5@0:7 6@0:0 7@0:0 8@0:0 9@0:0',
    verdict: MELODY,
  },
  {
    file: '13ac-KeySignatures-Octaves.xml',
    shows: 'octaves of signs and cancellations do not change the key',
    keys: '0@0:3 1@0:-2 2@0:7',
    verdict: MELODY,
  },
  {
    file: '13c-KeySignatures-NonTraditional.xml',
    shows: 'signatures that are none of the usual ones',
    keys: '0@0:0 1@0:0',
    verdict: MELODY,
  },
  {
    file: '13e-KeySignatures-MidMeasure-Change.xml',
    shows: 'the key changes on each beat',
    keys: '0@0:2 0@1:-2 0@2:0 0@3:7',
    notes: ['G4:1 G4:1 G4:1 G4:1'],
    verdict: MELODY,
  },
  {
    file: '21a-Chord-Basic.xml',
    shows: 'a chord of two notes',
    notes: ['A4:1 +F4:1 r:1'],
    verdict: /up to two notes at once from F4 to A4/,
  },
  {
    file: '21c-Chords-ThreeNotesDuration.xml',
    shows: 'chords of three notes',
    notes: [
      'F4:3/2 +A4:3/2 +C5:3/2 A4:1/2 +G5:1/2 A4:1 +F4:1 +C5:1 A4:1 +F4:1 +C5:1 | A4:1 +F4:1 +E5:1 A4:1 +F4:1 +F5:1 A4:2 +F4:2 +D5:2',
    ],
    verdict: /up to three notes at once from F4 to G5/,
  },
  {
    file: '21e-Chords-PickupMeasures.xml',
    shows: 'chords after an upbeat stand at the right moment',
    notes: ['C5:1 | C5:1 +A4:1 +F4:1 C5:1 +A4:1'],
    bars: '0i:1 1:2',
    verdict: NOT_FOUR,
  },
  {
    file: '21g-Chords-Tremolos.musicxml',
    shows: 'tremolos between chords halve their lengths',
    notes: [
      'F3:1 +C4:1 +G4:1 +D5:1 A3:1/2 +D4:1/2 +G4:1/2 +C5:1/2 B3:1/2 +D4:1/2 +F4:1/2 +A4:1/2 F5:1/2 +A5:1/2 +B5:1/2 +C6:1/2 G4:1 +D5:1 +A5:1 r:1/2',
    ],
    verdict: /up to four notes at once/,
  },
  {
    file: '22b-Staff-Notestyles.xml',
    shows: 'hidden notes are left out',
    notes: ['A4:1 A4:1 C5:1 A4:1 | C5:1 -:1 -:1 -:1 | -:2 G4:2'],
    verdict: MELODY,
  },
  {
    file: '22d-Parenthesized-Noteheads.xml',
    shows: 'brackets round noteheads change nothing',
    notes: ['A4:1 A4:1 A4:1 +C5:1 +E5:1 A4:1 +C5:1 +E5:1 r:1 r:1'],
    verdict: NOT_FOUR,
  },
  {
    file: '23b-Tuplets-Styles.xml',
    shows: 'triplets in all dresses, then four in the time of three and seventeen in the time of two',
    notes: [
      `${four(four('C5:1/3 C5:1/3 C5:1/3', 5).replaceAll(' | ', ' '), 3)} | C5:3/8 C5:3/8 C5:3/8 C5:3/8 ` +
        `${['889', '890', '889', '890', '889', '889', '890', '889', '890', '889', '890', '889', '889', '890', '889', '890', '889'].map((t) => `C5:${t}t≈`).join(' ')} C5:1/2 C5:1/2`,
    ],
    verdict: MELODY,
  },
  {
    file: '23d-Tuplets-Nested.xml',
    shows: 'five quavers in the time of two of a triplet: 2/15 of a crotchet each, 1,344 ticks',
    notes: ['B4:1/3 B4:1/3 B4:1344t B4:1344t B4:1344t B4:1344t B4:1344t B4:1/3 B4:1/3'],
    verdict: MELODY,
  },
  {
    file: '23f-Tuplets-DurationButNoBracket.xml',
    shows: 'lengths without tuplet brackets; two staves with a single line each are read as the outer voices',
    notes: [
      'F4:1 G4:1 A4:2/3 B4:2/3 C5:2/3 @0 A2:1/2 B2:1/2 C3:1/3 D3:1/3 E3:1/3 A2:1/4 B2:1/4 C3:1/4 D3:1/4 E3:1/6 F3:1/6 G3:1/6 A3:1/6 B3:1/6 C4:1/6',
    ],
    verdict: { S: 'F4 G4 A4 B4 C5', A: '', T: '', B: 'A2 B2 C3 D3 E3 A2 B2 C3 D3 E3 F3 G3 A3 B3 C4' },
  },
  {
    file: '24b-ChordAsGraceNote.xml',
    shows: 'chords of grace notes take no time',
    notes: ['C5:1 (D5)C5:1 (B4)A4:1 +C5:1'],
    verdict: NOT_FOUR,
  },
  {
    file: '24d-AfterGrace.xml',
    shows: 'grace notes before and after take no time',
    notes: ['E5:2 (G5 A5 A5)E5:2'],
    verdict: MELODY,
  },
  {
    file: '24f-GraceNote-Slur.xml',
    shows: 'a slurred grace note',
    notes: ['E5:2 (G5)E5:2'],
    verdict: MELODY,
  },
  {
    file: '31c-MetronomeMarks.xml',
    shows: 'dotted crotchet = 100 is 150 crotchets a minute; later marks do not replace it',
    tempo: 150,
    verdict: MELODY,
  },
  {
    file: '32aa-Notations2_Ornaments.xml',
    shows: 'ornaments change no pitch',
    notes: [`${four('C5:1 C5:1 C5:1 C5:1', 3)} | C5:1 C5:1 r:2`],
    title: 'MusicXML ornaments (attached to note)',
    verdict: MELODY,
  },
  {
    file: '32ac-Notations4.xml',
    shows: 'dynamics and the like change no pitch',
    notes: ['C5:1 C5:1 C5:1 C5:1 | G4:2 G4:2'],
    verdict: MELODY,
  },
  {
    file: '32ae-Notations6.musicxml',
    shows: 'wind fingerings change no pitch',
    notes: [four('C5:1 C5:1 C5:1 C5:1', 2)],
    verdict: MELODY,
  },
  {
    file: '32c-MultipleNotationChildren.xml',
    shows: 'several notations elements on a note',
    notes: ['A4:1 A4:1 A4:1'],
    verdict: MELODY,
  },
  {
    file: '32e-Fermatas.musicxml',
    shows: 'every shape of fermata is one',
    notes: [four('G4:2!', 7)],
    verdict: MELODY,
  },
  {
    file: '33b-Spanners-Tie.xml',
    shows: 'a semibreve tied over the barline',
    notes: ['F4:4~ | F4:4'],
    verdict: MELODY,
  },
  {
    file: '33d-Spanners-OctaveShifts.xml',
    shows: 'pitches under octave lines are written as they sound',
    notes: ['A4:1/2 C5:1/2 A6:1/2 C3:1/2 B2:1/2 A5:1/2 A5:1/2 B3:1/4 C4:1/4'],
    verdict: MELODY,
  },
  {
    file: '33f-Trill-EndingOnGraceNote.xml',
    shows: 'a trill over grace notes; the lower staff is empty',
    notes: ['E5:1 F#5:1/4 G5:1/4 (B5)A5:3/2'],
    verdict: { S: 'E5 F#5 G5 A5', A: '', T: '', B: '' },
  },
  {
    file: '33h-Spanners-Glissando.xml',
    shows: 'glissandi change no pitch',
    notes: [four('G4:1 F5:1 G4:1 F5:1', 5)],
    verdict: MELODY,
  },
  {
    file: '41a-MultiParts-Partorder.xml',
    shows: 'four parts in the order of the file, each with a crotchet and rests',
    notes: ['C4:1 r:1 r:2', 'E4:1 r:1 r:2', 'G4:1 r:1 r:2', 'B4:1 r:1 r:2'],
    keys: '0@0:1',
    verdict: { S: 'C4', A: 'E4', T: 'G4', B: 'B4' },
  },
  {
    file: '41c-StaffGroups.xml',
    shows: 'an orchestra of 28 parts',
    verdict: /It has 28 parts: the part "Piccolo" .* and 22 other parts/,
  },
  {
    file: '41e-StaffGroups-InstrumentNames-Linebroken.xml',
    shows: 'a name over two lines',
    partNames: 'Long Staff Name',
    verdict: MELODY,
  },
  {
    file: '41g-PartNoId.xml',
    shows: 'a part without an id',
    notes: ['r:4'],
    partNames: 'MusicXML Part',
    verdict: EMPTY,
  },
  {
    file: '41i-PartNameDisplay-Override.xml',
    shows: 'the printed name counts',
    partNames: 'Part name; Overridden Part Name',
    notes: ['C4:4 | C4:4', 'C4:4 | C4:4'],
    verdict: { S: 'C4 C4', A: '', T: '', B: 'C4 C4' },
  },
  {
    file: '42b-MultiVoice-MidMeasureClefChange.xml',
    shows: 'a clef change inside a bar, and a backup behind it',
    notes: [
      'F4:1/2 D4:1/2 B3:1/2 G3:1/2 F3:1 @0 r:1/2 G2:1/2 G2:1/2 G2:1/2 A2:1/4 G2:1/4 F#2:1/4 G2:1/4 | E5:1/2 C5:1/2 G4:1/2 G4:1/2 F4:1 @0 C3:1 +E3:1 +G3:1 +C4:1 r:1/2 r:1 G3:1/2',
    ],
    verdict: NOT_FOUR,
  },
  {
    file: '43b-MultiStaff-DifferentKeys.xml',
    shows: 'two staves in two keys are a keyboard piece',
    notes: ['F4:4 @0 B2:4'],
    keys: '0@0:0 0@0:2',
    verdict: NOT_FOUR,
  },
  {
    file: '43d-MultiStaff-StaffChange.xml',
    shows: 'a voice that steps over to the other staff',
    verdict: /two staves: .*up to four notes at once/,
  },
  { file: '45a-SimpleRepeat.xml', shows: 'a repeated bar is read once', bars: '1:4b4 2:4', verdict: EMPTY },
  {
    file: '45c-RepeatMultipleTimes.xml',
    shows: 'repeats',
    bars: '1:4 2:4f0 3:4b4 4:4 5:4 6:4 7:4b4 8:4',
    verdict: EMPTY,
  },
  {
    file: '45e-Repeats-Nested-Alternatives.xml',
    shows: 'endings',
    bars: '1:4 2:4e1b4 3:4e2 4:4 5:4f0b4 6:4f0 7:4e1b4 8:4e2f0 9:4b4 10:4',
    verdict: EMPTY,
  },
  {
    file: '45g-Repeats-NotEnded.xml',
    shows: 'a repeat that never ends',
    bars: '1:4 2:4f0',
    notes: ['C5:4 | C5:4'],
    verdict: MELODY,
  },
  {
    file: '46b-MidmeasureBarline.xml',
    shows: 'a barline in the middle divides no bar',
    bars: '1:4',
    notes: ['C5:1 A4:1 F4:1 C5:1'],
    verdict: MELODY,
  },
  {
    file: '46d-PickupMeasure-ImplicitMeasures.xml',
    shows: 'an upbeat of 3/8, a bar in two halves, a bar of 3/4',
    bars: '0i:3/2 1:2 X1i:2 2:3',
    notes: ['E4:1 E4:1/2 | F4:1 G4:1 | A4:1 B4:1 | C5:1 D5:1 r:1'],
    verdict: MELODY,
  },
  {
    file: '46f-IncompleteMeasures.xml',
    shows: 'bars with two crotchets in 4/4',
    bars: '1:2 2:4 3:2 4:4',
    verdict: MELODY,
  },
  {
    file: '51b-Header-Quotes.xml',
    shows: 'quotes in title and part name',
    title: '"Quotes" in header fields',
    partNames: 'Staff "Test"',
    verdict: EMPTY,
  },
  {
    file: '51d-EmptyTitle.xml',
    shows: 'the movement title where the work title is empty',
    title: 'Empty work-title, non-empty movement-title',
    verdict: EMPTY,
  },
  {
    file: '52b-Breaks.xml',
    shows: 'breaks of systems and pages',
    notes: ['C5:4 | C5:4 | C5:4'],
    verdict: MELODY,
  },
  {
    file: '61b-MultipleLyrics.xml',
    shows: 'verses in the order of their numbers',
    lyrics: '1.Tra- la- la, ja! Tra- ra... / 2.tra- la- la, ja! Tra- ra. / 3.TRA- LA- LA, JA! TRA- RA...',
    verdict: MELODY,
  },
  {
    file: '61d-Lyrics-Melisma.xml',
    shows: 'slurs and ties under one syllable',
    notes: ['C5:1 A4:1 +E5:1 C5:1 C5:1 +E5:1 | C5:1~ C5:1 C5:1 E5:1'],
    verdict: NOT_FOUR,
  },
  {
    file: '61f-Lyrics-GracedNotes.xml',
    shows: 'grace notes do not move the syllables',
    notes: ['G4:1 (D5)C5:1 C5:1 (D5)C5:1 | C5:1~ (E5 D5)C5:1 (D5)C5:1 C5:1'],
    verdict: MELODY,
  },
  {
    file: '61h-Lyrics-BeamsMelismata.xml',
    shows: 'beams and slurs',
    notes: [four('C5:1/2 A4:1/2 C5:1/2 A4:1/2 C5:1/2 G4:1/2 B4:1/2 r:1/2', 4)],
    verdict: MELODY,
  },
  {
    file: '61j-Lyrics-Elisions.xml',
    shows: 'several syllables on one note',
    lyrics: 'a b c d e f g h',
    verdict: MELODY,
  },
  {
    file: '71a-Chordnames.xml',
    shows: 'chord names',
    notes: [four('A4:1 A4:1 A4:1 A4:1', 2)],
    verdict: MELODY,
  },
  {
    file: '71d-ChordsFrets-Multistaff.xml',
    shows: 'two staves with two voices each, and chord names: that is a closed score',
    notes: ['D5:1 D5:1 D5:1 D5:1 @0 F4:1 F4:1 F4:1 F4:1 @0 D3:1 D3:1 D3:1 D3:1 @0 B2:1 B2:1 B2:1 B2:1'],
    verdict: { S: 'D5 D5 D5 D5', A: 'F4 F4 F4 F4', T: 'D3 D3 D3 D3', B: 'B2 B2 B2 B2' },
  },
  {
    file: '71f-AllChordTypes.xml',
    shows: 'chord names of every kind over middle C',
    notes: [`${four('C4:1 C4:1 C4:1 C4:1', 8)} | C4:2 C4:1/2 C4:1/2 r:1 | C4:1 C4:1`],
    verdict: MELODY,
  },
  {
    file: '72a-TransposingInstruments.xml',
    shows: 'trumpet in B flat, horn in E flat and piano all sound the scale of C major',
    notes: [
      'C4:1 D4:1 E4:1 F4:1 | G4:1 A4:1 B4:1 C5:1',
      'C4:1 D4:1 E4:1 F4:1 | G4:1 A4:1 B4:1 C5:1',
      'C4:1 D4:1 E4:1 F4:1 | G4:1 A4:1 B4:1 C5:1',
    ],
    keys: '0@0:0',
    verdict: /It has three parts: the part "Trumpet in Bb" \(one line of notes from C4 to C5\)/,
  },
  {
    file: '72c-TransposingInstruments-Change.xml',
    shows: 'two clarinets in turn: the piece is in B flat major',
    keys: '0@0:-2 1@0:-2',
    notes: ['Eb4:4 | Bb3:4 | Bb3:4'],
    verdict: MELODY,
  },
  {
    file: '73a-Percussion.xml',
    shows: 'timpani, cymbals, triangle',
    notes: ['E3:4~ | E3:2 A2:2', ' | ', ' | '],
    verdict: /"Cymbals" \(percussion without pitch\)/,
  },
  {
    file: '75a-AccordionRegistrations.xml',
    shows: 'accordion registers',
    notes: [four('C4:1 C4:1 C4:1 C4:1', 4)],
    verdict: MELODY,
  },
  {
    file: '99b-Lyrics-BeamsMelismata-IgnoreBeams.xml',
    shows: 'wrong beams change no note',
    notes: [four('C5:1/2 A4:1/2 C5:1/2 A4:1/2 C5:1/2 G4:1/2 B4:1/2 r:1/2', 4)],
    verdict: MELODY,
  },
  {
    file: '99d-AccordionInvalid.xml',
    shows: 'invalid registers change no note',
    notes: ['C4:1 C4:1 C4:1 C4:1'],
    verdict: MELODY,
  },
];
