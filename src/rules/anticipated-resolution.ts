import { listed } from '../english/words.ts';
import type { Analysis, Ornament } from '../harmony/analysis.ts';
import { isPassingBy } from '../harmony/questions/ornamental.ts';
import { sameNoteName, staffPlace } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { sliceAt, type Tone, toneIn } from '../score/texture.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice, named } from './wording.ts';

export const anticipatedResolution = defineRule({
  id: 'anticipated-resolution',
  name: 'Note of resolution already sung',
  family: 'dissonance',
  statement:
    'While a note is suspended no other voice sings the note it resolves to, except the bass under a 9–8.',
  why: 'A suspension holds something back; if another voice already sings the note that is awaited, the clash is harsh and the resolution comes as no surprise.',
  hints: [
    'Find the note to which the suspension resolves and see who sings it at the same time.',
    'Let that voice take another note of the chord until the suspension has resolved.',
    'Suspensions: the note of resolution is not doubled during the suspension, save by the bass in 9–8.',
  ],
  source:
    'W. Piston, Harmony, chapter on nonharmonic tones (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 10 on non-chord notes (open to all)',
  severity: 'fault',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto suspends F before E, but the tenor already has E.',
        text: `key: C major
metre: 4/4
S: C5*2 B4*2 | C5*4 |
A: E4*2 F4*2 | F4*2 E4*2 |
T: G3*4 | E3*4 |
B: C3*2 G2*2 | C3*4 |`,
      },
    ],
    right: [
      {
        caption: 'The tenor keeps away from the third until the alto has it.',
        text: `key: C major
metre: 4/4
S: C5*2 B4*2 | C5*4 |
A: E4*2 F4*2 | F4*2 E4*2 |
T: G3*4 | G3*4 |
B: C3*2 G2*2 | C3*4 |`,
      },
    ],
  },
  check: (analysis) => analysis.ornaments.flatMap((ornament) => anticipated(analysis, ornament)),
});

function anticipated(analysis: Analysis, ornament: Ornament): Occurrence[] {
  const { kind, resolution, tone } = ornament;
  if (kind !== 'suspension' || resolution === undefined) return [];
  const slice = sliceAt(analysis.texture, ornament.at);
  if (slice === undefined) return [];
  const lowest = VOICES.findLast((voice) => toneIn(slice, voice) !== undefined);
  const doubling = VOICES.flatMap((voice): Tone[] => {
    const other = voice === ornament.voice ? undefined : toneIn(slice, voice);
    if (other === undefined || !sameNoteName(other.pitch, resolution.pitch)) return [];
    // 9–8, and 2–1 where the tenor comes down to the bass itself: the lowest of the voices that sing has the root.
    if (voice === lowest && staffPlace(tone.pitch) > staffPlace(other.pitch)) return [];
    return isPassingBy(analysis.texture, other) ? [] : [other];
  });
  if (doubling.length === 0) return [];
  return [
    about([tone, resolution, ...doubling], {
      // Under a suspension in the bass the note of resolution above is milder.
      severity: tone.voice === 'B' ? 'query' : 'fault',
      from: ornament.at,
      until: resolution.until,
      message: `${inVoice(tone)} is suspended before ${named(resolution)}, but ${listed(doubling.map(named))} ${doubling.length === 1 ? 'has' : 'have'} that note already.`,
    }),
  ];
}
