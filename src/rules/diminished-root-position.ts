import type { Analysis, Chord } from '../harmony/analysis.ts';
import { isDominant } from '../harmony/questions/functions.ts';
import { isFleeting, isPassingBy } from '../harmony/questions/ornamental.ts';
import { inFallingFifths } from '../harmony/questions/progression.ts';
import {
  diminishedTriadOf,
  nextChord,
  previousChord,
  type Voicing,
  voicings,
} from '../harmony/questions/voicing.ts';
import { intervalBetween } from '../score/interval.ts';
import { nextTone, previousTone } from '../score/motion.ts';
import { printNoteName } from '../score/pitch.ts';
import { placeAt, printPlace } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import { type Tone, toneIn } from '../score/texture.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';

export const diminishedRootPosition = defineRule({
  id: 'diminished-root-position',
  name: 'Diminished triad in root position',
  family: 'chords',
  statement: 'A diminished triad is used in first inversion.',
  why: 'In root position the diminished fifth stands on the bass, and the chord sounds thin and restless; in first inversion the bass is consonant with the other voices.',
  hints: [
    'Look at the bass note of this chord: it is the root of a diminished triad.',
    'Put the third of the chord in the bass, or use a dominant chord there.',
    'Choice of chords: the diminished triads (on the leading note, and on the supertonic in minor) go in first inversion.',
  ],
  source: 'W. Piston, Harmony, chapter on triads in first inversion (from memory)',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The second chord is a diminished triad on its root.',
        text: `key: C major
metre: 4/4
S: C5 D5 C5 B4 | C5*4! |
A: G4 F4 E4 D4 | E4*4! |
T: E4 D4 G3 G3 | G3*4! |
B: C3 B2 C3 G2 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The same chord in first inversion.',
        text: `key: C major
metre: 4/4
S: C5 B4 C5 B4 | C5*4! |
A: G4 F4 E4 D4 | E4*4! |
T: E4 D4 G3 G3 | G3*4! |
B: C3 D3 C3 G2 | C3*4! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap((voicing) => rooted(analysis, voicing)),
});

function rooted(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord, slices } = voicing;
  const triad = diminishedTriadOf(voicing);
  if (triad?.bass !== 'root' || !voicing.sure || inFallingFifths(analysis, chord.index)) return [];
  // A voice still to be written could sing the root of a seventh chord.
  if (voicing.written.length < VOICES.length) return [];
  const bass = slices[0] && toneIn(slices[0], 'B');
  // Eight–seven over a bass that stays: the dominant's own root has only just gone on to the seventh.
  if (isOverSameBass(analysis, previousChord(analysis, chord.index), chord, bass)) return [];
  if (isFleeting(analysis, chord) && (bass === undefined || isPassingBy(analysis.texture, bass))) return [];
  const where = printPlace(placeAt(analysis.texture.score, chord.at));
  return [
    about(bass === undefined ? [] : [bass], {
      severity: gravity(analysis, chord, bass),
      from: chord.at,
      until: chord.until,
      message: `The diminished triad at ${where} has its root, ${printNoteName(triad.root)}, in the bass.`,
    }),
  ];
}

/** In minor the diminished triad on the supertonic is now and then used so, and in passing by step any may be. */
function gravity(analysis: Analysis, chord: Chord, bass: Tone | undefined): Severity {
  const supertonic = chord.roman.degree === 2 && chord.key.mode === 'minor';
  const passes = bass !== undefined && passesByStep(analysis, bass);
  if (supertonic || passes || isFleeting(analysis, chord)) return 'remark';
  // The root of the seventh chord comes in late, while the bass stays for it.
  return isOverSameBass(analysis, nextChord(analysis, chord.index), chord, bass) ? 'remark' : 'query';
}

/** The chord beside this one is the dominant in first inversion that it stands for, and the bass sings one note for both. */
function isOverSameBass(
  analysis: Analysis,
  beside: Chord | undefined,
  chord: Chord,
  bass: Tone | undefined,
): boolean {
  if (beside === undefined || bass === undefined || beside.roman.inversion !== 1) return false;
  const slice = voicings(analysis)[beside.index]!.slices[0];
  if (slice === undefined || toneIn(slice, 'B') !== bass || !isDominant(beside)) return false;
  return diminishedTriadOf(voicings(analysis)[beside.index]!) === undefined && isDominant(chord);
}

/** The bass goes on through the root by step in one direction. */
function passesByStep({ texture }: Analysis, bass: Tone): boolean {
  const [before, after] = [previousTone(texture, bass), nextTone(texture, bass)];
  if (before === undefined || after === undefined) return false;
  const ways = [
    intervalBetween(before.pitch, bass.pitch).steps,
    intervalBetween(bass.pitch, after.pitch).steps,
  ];
  return Math.abs(ways[0]!) === 1 && ways[0] === ways[1];
}
