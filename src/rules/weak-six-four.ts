import type { Analysis, Chord } from '../harmony/analysis.ts';
import { type Hearing, hearingFrom, hearings, tonesIn } from '../harmony/by-ear/hearing.ts';
import { isTonic } from '../harmony/questions/functions.ts';
import { chordAt, pitchAt } from '../harmony/questions/moments.ts';
import { nextChord, voicings } from '../harmony/questions/voicing.ts';
import { phraseBreaks } from '../score/motion.ts';
import { type NoteName, sameNoteName } from '../score/pitch.ts';
import { barAt, metricalStrength, placeAt, printBeat, printPlace } from '../score/place.ts';
import { type Slice, sliceAt, toneIn } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { about, besides, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const weakSixFour = defineRule({
  id: 'weak-six-four',
  name: 'Cadential six-four on a weak beat',
  family: 'chords',
  statement: 'A cadential six-four stands on a stronger beat than the dominant it leads to.',
  why: 'The cadential six-four leans on the dominant like a suspension: it has to fall on the heavier beat, or the cadence limps.',
  hints: [
    'Find the beat on which the six-four stands and the beat on which the dominant follows.',
    'Move the six-four to the stronger beat, or put another chord before the dominant.',
    'Cadences: Ic–V falls strong to weak.',
  ],
  source: 'A. Butterworth, Harmony in Practice, on the cadential six-four (from memory)',
  severity: 'fault',
  weight: 6,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The six-four is on the second beat, its dominant on the stronger third.',
        text: `key: C major
metre: 4/4
S: C5 C5 B4*2 | C5*4! |
A: A4 G4 G4*2 | G4*4! |
T: F4 E4 D4*2 | E4*4! |
B: F3 G3 G3*2 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The six-four is on the third beat, its dominant on the weaker fourth.',
        text: `key: C major
metre: 4/4
S: C5*2 C5 B4 | C5*4! |
A: A4*2 G4 G4 | G4*4! |
T: F4*2 E4 D4 | E4*4! |
B: F3*2 G3 G3 | C3*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      analysis.chords.flatMap((chord) => weak(analysis, chord)),
      hearings(analysis.texture).flatMap((heard) => weakAsHeard(analysis, heard)),
    ),
});

function weak(analysis: Analysis, chord: Chord): Occurrence[] {
  const voicing = voicings(analysis)[chord.index]!;
  const next = nextChord(analysis, chord.index);
  if (!voicing.sure || next === undefined || !leansOnDominant(chord, next)) return [];
  if (strength(analysis, chord.at) >= strength(analysis, next.at)) return [];
  const { score } = analysis.texture;
  const [here, there] = [placeAt(score, chord.at), placeAt(score, next.at)];
  const second =
    here.bar === there.bar
      ? `beat ${printBeat(there)}`
      : `beat ${printBeat(there)} of bar ${there.bar.number}`;
  return [
    about(openingTones(voicing), {
      from: chord.at,
      until: next.until,
      message: `The cadential six-four in bar ${here.bar.number} stands on beat ${printBeat(here)}, and its dominant on ${second}, which is stronger.`,
    }),
  ];
}

/** The same by the notes alone, where the reading hears the dominant too early and the six-four not at all. */
function weakAsHeard(analysis: Analysis, heard: Hearing): Occurrence[] {
  const { texture } = analysis;
  const { fifth, seventh } = heard.members;
  const next = hearingFrom(texture, heard.until);
  if (seventh !== undefined || heard.quality === 'diminished' || !sameNoteName(heard.bass, fifth)) return [];
  if (next === undefined || next.quality !== 'major' || !sameNoteName(next.members.root, fifth)) return [];
  // What follows is the tonic by the reading: the subdominant leant on it.
  const after = chordAt(analysis, next.at);
  if (after !== undefined && isTonic(after)) return [];
  const begins = beginningOf(analysis, heard);
  // The dominant may come with a suspension, and be whole only when that has resolved.
  const turn = sliceAt(texture, heard.until);
  const low = turn && toneIn(turn, 'B')?.pitch;
  if (turn === undefined || low === undefined || !sameNoteName(low, fifth)) return [];
  if (!sameNoteName(next.bass, fifth) || begins.strength < 2 || begins.strength >= turn.strength) return [];
  const gap = phraseBreaks(texture).has(heard.until) || next.at - heard.until >= beatLength(turn.bar.metre);
  const before = pitchAt(analysis, 'B', begins.at - 1);
  if (gap || before === undefined || sameNoteName(before, fifth)) return [];
  return [
    about(tonesIn(begins), {
      severity: 'remark',
      from: begins.at,
      until: next.until,
      message: `What sounds at ${printPlace(placeAt(texture.score, begins.at))} is a six-four before a dominant on a stronger beat.`,
    }),
  ];
}

/** The slice from which nothing but notes of this chord sounds, whole or not, over the bass it has. */
function beginningOf({ texture }: Analysis, { slices, members, bass }: Hearing): Slice {
  const own = Object.values(members);
  let first = slices[0]!;
  const breaks = phraseBreaks(texture);
  for (let i = first.index - 1; i >= 0 && !breaks.has(first.at); i--) {
    const slice = texture.slices[i]!;
    const tones = tonesIn(slice);
    const same = tones.every(({ pitch }) => own.some((name: NoteName) => sameNoteName(name, pitch)));
    const low = toneIn(slice, 'B')?.pitch;
    if (slice.until !== first.at || !same || low === undefined || !sameNoteName(low, bass)) break;
    first = slice;
  }
  return first;
}

/** A tonic in second inversion whose bass stays and becomes the root of the dominant. */
function leansOnDominant(chord: Chord, next: Chord): boolean {
  const { roman } = chord;
  if (roman.inversion !== 2 || roman.seventh !== undefined) return false;
  if (chord.sixFour === 'pedal' || chord.sixFour === 'passing') return false;
  return sameNoteName(next.root, chord.bass) && next.roman.inversion === 0 && next.quality === 'major';
}

function strength(analysis: Analysis, at: Ticks): number {
  return metricalStrength(barAt(analysis.texture.score, at), at);
}
