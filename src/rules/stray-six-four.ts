import type { Analysis, Chord } from '../harmony/analysis.ts';
import { placesTo } from '../harmony/by-ear/bare-dissonances.ts';
import { type Hearing, hearingAt, hearings, isWritten, tonesIn } from '../harmony/by-ear/hearing.ts';
import { endsPhrase } from '../harmony/questions/moments.ts';
import { isFleeting, isStepwise } from '../harmony/questions/ornamental.ts';
import { nextChord, type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { numeral } from '../harmony/words/labels.ts';
import { nextTone, phraseBreaks, previousTone } from '../score/motion.ts';
import { printNoteName, sameNoteName } from '../score/pitch.ts';
import { barAt, metricalStrength, placeAt, printPlace } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import { toneIn } from '../score/texture.ts';
import { about, besides, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';

export const straySixFour = defineRule({
  id: 'stray-six-four',
  name: 'Six-four out of place',
  family: 'chords',
  statement:
    'A chord in second inversion is cadential, passing, over a pedal, or part of a broken chord; nothing else.',
  why: 'With the fifth in the bass a chord makes a fourth above it, which wants to move: a six-four that comes from nowhere and goes nowhere sounds as if the bass had taken the wrong note.',
  hints: [
    'Look at the bass note of this chord, at the one before and at the one after.',
    'Let the bass take the root or the third, or make it stay or pass by step on both sides.',
    'Second inversion: cadential, passing, pedal (auxiliary) and arpeggiated six-fours are the four uses.',
  ],
  source: 'S. Kostka and D. Payne, Tonal Harmony, chapter on triads in second inversion (from memory)',
  severity: 'fault',
  weight: 8,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The second chord has its fifth in the bass, reached by a leap from another chord.',
        text: `key: C major
metre: 4/4
S: C5 D5 B4*2 | C5*4! |
A: G4 F4 G4*2 | G4*4! |
T: E4 D4 D4*2 | E4*4! |
B: C3 A2 G2*2 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The second chord is in first inversion.',
        text: `key: C major
metre: 4/4
S: C5 D5 B4*2 | C5*4! |
A: G4 A4 G4*2 | G4*4! |
T: E4 D4 D4*2 | E4*4! |
B: C3 F3 G3*2 | C3*4! |`,
      },
      {
        caption: 'A passing six-four: the bass goes through by step.',
        text: `key: C major
metre: 4/4
S: C5 B4 C5 B4 | C5*4! |
A: G4 G4 G4 F4 | E4*4! |
T: E4 D4 C4 D4 | C4*4! |
B: C3 D3 E3 G3 | C3*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      analysis.chords.flatMap((chord) => stray(analysis, chord)),
      hearings(analysis.texture).flatMap((heard) => strayAsHeard(analysis, heard)),
    ),
});

function stray(analysis: Analysis, chord: Chord): Occurrence[] {
  const voicing = voicings(analysis)[chord.index]!;
  if (chord.sixFour === undefined || !voicing.sure || voicing.written.length < VOICES.length) return [];
  // Whatever comes after, a phrase that stops on a six-four has nowhere for it to go.
  const stops = endsPhrase(analysis, chord);
  if (!stops && chord.sixFour !== 'free') return [];
  // Over its diminished fifth a chord has no fourth from the bass; over the dominant bass it leans on the dominant.
  if (chord.quality === 'diminished' || (!stops && leansOnDominant(analysis, chord))) return [];
  const where = printPlace(placeAt(analysis.texture.score, chord.at));
  return [
    about(openingTones(voicing), {
      severity: stops ? 'fault' : gravity(analysis, voicing),
      from: chord.at,
      until: chord.until,
      message: stops
        ? `The phrase stops at ${where} on a six-four, ${numeral(chord.roman, chord.key)}.`
        : `The chord at ${where}, ${numeral(chord.roman, chord.key)}, is a six-four that is neither cadential nor passing, nor over a pedal, nor part of a broken chord.`,
    }),
  ];
}

/** A fault on the beat with the bass leaping in or out; off the beat worth a second look; where it steps, mentioned. */
function gravity(analysis: Analysis, { chord, slices }: Voicing): Severity {
  const bar = barAt(analysis.texture.score, chord.at);
  const bass = slices[0] && toneIn(slices[0], 'B');
  if (isFleeting(analysis, chord)) return 'remark';
  if (bass === undefined || metricalStrength(bar, chord.at) < 2) return 'query';
  return isStepwise(analysis.texture, bass) ? 'remark' : 'fault';
}

/** A triad over its fifth by the notes alone, with a bass that leaps in and out, between other chords. */
function strayAsHeard(analysis: Analysis, heard: Hearing): Occurrence[] {
  const { texture } = analysis;
  const { root, fifth, seventh } = heard.members;
  if (seventh !== undefined || heard.quality === 'diminished' || !sameNoteName(heard.bass, fifth)) return [];
  if (!isWritten(heard)) return [];
  const basses = new Set(heard.slices.flatMap((slice) => toneIn(slice, 'B') ?? []));
  const [first, last] = [[...basses][0]!, [...basses].at(-1)!];
  const [before, after] = [previousTone(texture, first), nextTone(texture, last)];
  if (before === undefined || after === undefined || phraseBreaks(texture).has(first.at)) return [];
  const leaps = Math.abs(placesTo(before, first)) > 1 && Math.abs(placesTo(last, after)) > 1;
  // Longer than the triad, the bass is not its own; an octave away it is the same bass.
  const own = first.at >= heard.at && last.until <= heard.until;
  if (
    !leaps ||
    !own ||
    [...basses, before, after].some(
      (tone) => tone !== first && tone.pitch.step === fifth.step && !basses.has(tone),
    )
  )
    return [];
  // Part of a broken chord: the same triad goes before or after.
  const around = [hearingAt(texture, first.at - 1), hearingAt(texture, last.until)];
  if (around.some((other) => other !== undefined && sameNoteName(other.members.root, root))) return [];
  const slice = heard.slices[0]!;
  return [
    about(tonesIn(slice), {
      severity: 'remark',
      from: heard.at,
      until: heard.until,
      message: `What sounds at ${printPlace(placeAt(texture.score, heard.at))} is a six-four on ${printNoteName(root)}, and the bass leaps to it and away from it.`,
    }),
  ];
}

function leansOnDominant(analysis: Analysis, chord: Chord): boolean {
  const next = nextChord(analysis, chord.index);
  return next !== undefined && next.roman.inversion === 0 && sameNoteName(next.root, chord.bass);
}
