import type { Analysis, Chord } from '../harmony/analysis.ts';
import { isFleeting } from '../harmony/ornamental.ts';
import { type Member, memberOf } from '../harmony/questions.ts';
import { belongsToKey } from '../harmony/spelling.ts';
import { type Voicing, voicings } from '../harmony/voicing.ts';
import { printNoteName } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { toneIn } from '../score/texture.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice, inWords } from './wording.ts';

export const missingRoot = defineRule({
  id: 'missing-root',
  name: 'Root missing',
  family: 'chords',
  statement: 'Every chord has its root.',
  why: 'The root is what the chord is heard on; without it nobody can tell which chord is meant.',
  hints: [
    'Ask which chord you mean here, and which of its notes the four voices have.',
    'Give the root to the voice that doubles another note, best of all to the bass.',
    'Doubling and omission: only the fifth may be left out of a chord.',
  ],
  source: 'common practice, no source',
  severity: 'query',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The dominant has only F# and A: its root is nowhere.',
        text: `key: G major
metre: 4/4
S: B4 C5 A4*2 | G4*4! |
A: G4 G4 F#4*2 | D4*4! |
T: D4 E4 A3*2 | B3*4! |
B: G3 C4 F#3*2 | G3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The bass has the root of the dominant.',
        text: `key: G major
metre: 4/4
S: B4 C5 A4*2 | G4*4! |
A: G4 G4 F#4*2 | D4*4! |
T: D4 E4 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => voicings(analysis).flatMap((voicing) => lacking(analysis, voicing)),
});

function lacking(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  if (!voicing.complete || isFleeting(analysis, chord)) return [];
  const tones = openingTones(voicing);
  const has = inWords(tones.map(inVoice));
  if (isOnly(voicing, ['third', 'fifth']))
    return [
      about(tones, {
        from: chord.at,
        until: chord.until,
        message: `This reads as a chord on ${printNoteName(chord.root)}, but nobody sings ${printNoteName(chord.root)}: ${has}.`,
      }),
    ];
  if (!isOnly(voicing, ['root', 'third']) || !isDoubtful(chord)) return [];
  return [
    about(tones, {
      from: chord.at,
      until: chord.until,
      message: `With only ${printNoteName(chord.members.root)} and ${printNoteName(chord.members.third)} this chord seems to have lost its root: ${has}.`,
    }),
  ];
}

/** These members of the chord sound, and nothing else, from beginning to end. */
function isOnly({ chord, slices }: Voicing, members: readonly Member[]): boolean {
  return slices.every((slice) =>
    VOICES.every((voice) => {
      const tone = toneIn(slice, voice);
      const member = tone && memberOf(chord, tone.pitch);
      return tone === undefined || (member !== undefined && members.includes(member));
    }),
  );
}

/**
 * Read as root and third, these chords are hardly what was meant: a diminished triad without its fifth, the
 * mediant without its fifth, a chord whose fifth the key does not have, or an inversion with two notes. More likely
 * the root a third below is missing.
 */
function isDoubtful(chord: Chord): boolean {
  if (chord.members.seventh !== undefined) return false;
  if (chord.quality === 'diminished' || chord.roman.degree === 3 || chord.roman.inversion > 0) return true;
  return chord.roman.applied === undefined && !belongsToKey(chord.members.fifth, chord.key);
}
