import { listed } from '../english/words.ts';
import type { Analysis, Phrase } from '../harmony/analysis.ts';
import { finalPhrase, lastChordOf } from '../harmony/questions/closes.ts';
import { lacksThird, tonesOf, voicings } from '../harmony/questions/voicing.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const incompleteLastChord = defineRule({
  id: 'incomplete-last-chord',
  name: 'Last chord incomplete',
  family: 'cadences and phrases',
  statement: 'The last chord is complete: root, third and fifth.',
  why: 'The last chord is held longest and heard best; what is missing from it is missed.',
  hints: [
    'Name the notes of the last chord and see which member nobody sings.',
    'Let an inner voice go to the missing member: the leading note in alto or tenor may fall to the fifth.',
    'Cadences: a complete dominant and a complete tonic need one inner voice to move by a third.',
  ],
  source:
    'W. Piston, Harmony, chapter on triads in four parts (from memory): the fifth may be left out; the style’s last chords are mostly whole: M. Boyd, Harmonizing “Bach” Chorales (from memory)',
  severity: 'remark',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The last chord has three Gs and a B, but no fifth.',
        text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | G4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The alto falls to the fifth, and the chord is complete.',
        text: `key: G major
metre: 4/4
S: B4 C5 B4 A4 | G4*4! |
A: G4 G4 G4 F#4 | D4*4! |
T: D4 E4 D4 C4 | B3*4! |
B: G3 C3 D3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => {
    const phrase = finalPhrase(analysis);
    return phrase === undefined ? [] : incomplete(analysis, phrase);
  },
});

function incomplete(analysis: Analysis, phrase: Phrase): Occurrence[] {
  const last = lastChordOf(analysis, phrase);
  const voicing = last && voicings(analysis)[last.index];
  if (last === undefined || voicing === undefined || !voicing.complete) return [];
  const missing = (['root', 'third', 'fifth'] as const).filter((member) =>
    member === 'third' ? lacksThird(voicing) : tonesOf(voicing, member).length === 0,
  );
  if (missing.length === 0) return [];
  const tones = openingTones(voicing);
  return [
    about(tones, {
      // Without its third or root the chord is hollow; without its fifth it is merely less full.
      severity: missing.includes('third') || missing.includes('root') ? 'fault' : 'remark',
      from: last.at,
      until: last.until,
      message: `The last chord has no ${listed(missing, 'or')}: ${listed(tones.map(inVoice))}.`,
    }),
  ];
}
