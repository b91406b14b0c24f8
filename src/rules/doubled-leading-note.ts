import { listed } from '../english/words.ts';
import type { Analysis, Chord } from '../harmony/analysis.ts';
import { hearings, isWritten, reachesItsTonic } from '../harmony/by-ear/hearing.ts';
import { dominantIn } from '../harmony/by-ear/keys-near.ts';
import { leadingNoteIn } from '../harmony/questions/degrees.ts';
import { type Doubling, doublingsIn, doublingsOf } from '../harmony/questions/doubling.ts';
import { isDominant, isTonic } from '../harmony/questions/functions.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { chordAt, endsPhrase } from '../harmony/questions/moments.ts';
import { isStepwise } from '../harmony/questions/ornamental.ts';
import { nextChord, type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { fifthsPlace, type NoteName, printNoteName } from '../score/pitch.ts';
import type { Tone } from '../score/texture.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice } from './wording.ts';

export const doubledLeadingNote = defineRule({
  id: 'doubled-leading-note',
  name: 'Leading note doubled',
  family: 'chords',
  statement: 'Only one voice has the leading note of a dominant chord.',
  why: 'The leading note pulls so strongly to the tonic that two voices with it either move in octaves or leave one of them hanging; and it already sticks out of the chord when one voice sings it.',
  hints: [
    'Find the two voices that have the leading note in this chord.',
    'Keep it in one of them, the one that rises to the tonic most naturally, and let the other take the root or the fifth of the chord.',
    'Doubling: double the root, or the fifth, and never the leading note.',
  ],
  source: 'W. Piston, Harmony, chapter on the dominant and on doubling (from memory)',
  severity: 'fault',
  weight: 7,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Alto and tenor both have F#, the leading note of G.',
        text: `key: G major
metre: 4/4
S: B4 A4 A4*2 | G4*4! |
A: G4 E4 F#4*2 | G4*4! |
T: D4 C4 F#3*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The tenor takes the root of the chord instead.',
        text: `key: G major
metre: 4/4
S: B4 A4 A4*2 | G4*4! |
A: G4 E4 F#4*2 | D4*4! |
T: D4 A3 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      voicings(analysis).flatMap((voicing) => doublings(analysis, voicing)),
      hearings(analysis.texture)
        .filter(isWritten)
        .flatMap((heard) => {
          // The reading may take the chord for one of another key, in which the note does not lead.
          const leading = dominantIn(analysis, heard)?.leading;
          const found =
            leading && heard.slices[0]!.strength >= 1 ? doublingsIn(analysis, heard, leading) : [];
          // A tonic that stays where it is leads nowhere, whatever it would be in the key next door.
          const chord = chordAt(analysis, heard.at);
          const rests = chord !== undefined && isTonic(chord);
          if (rests && !found.some(({ tones }) => reachesItsTonic(analysis.texture, heard, tones[0]!)))
            return [];
          return found.map((doubling) => doubledAs(leading!, doubling, 'remark'));
        }),
    ),
});

/** One occurrence for each stretch of a dominant chord in which two voices or more sound its leading note. */
function doublings(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  const leading = isDominant(chord) ? leadingNoteIn(chord) : undefined;
  if (leading === undefined) return [];
  return doublingsOf(analysis, voicing, leading)
    .map((doubling) => doubledAs(leading, doubling, gravity(analysis, chord, leading, doubling.tones)))
    .filter(({ severity }) => voicing.settled || severity !== 'remark');
}

function doubledAs(leading: NoteName, { from, until, tones }: Doubling, severity: Severity): Occurrence {
  return about(tones, {
    severity,
    from,
    until,
    message: `The leading note ${printNoteName(leading)} is doubled: ${listed(tones.map(inVoice))}.`,
  });
}

/**
 * A fault where the chord does lead to its tonic, in smooth lines worth a second look; where the chord leads elsewhere
 * or ends its phrase, hardly a leading note any more.
 */
function gravity(analysis: Analysis, chord: Chord, leading: NoteName, tones: readonly Tone[]): Severity {
  const next = chordAfterDominants(analysis, chord, leading);
  const ends = endsPhrase(analysis, chord);
  const leads = next !== undefined && !ends && fifthsPlace(next.root) === fifthsPlace(leading) - 5;
  const smooth = tones.every((tone) => isStepwise(analysis.texture, tone));
  if (leads) return smooth ? 'query' : 'fault';
  return 'remark';
}

/** What follows when this chord, and dominants after it that have the same leading note, are over. */
function chordAfterDominants(analysis: Analysis, chord: Chord, leading: NoteName): Chord | undefined {
  let next = nextChord(analysis, chord.index);
  while (next !== undefined && isDominant(next) && memberOf(next, leading) !== undefined)
    next = nextChord(analysis, next.index);
  return next;
}
