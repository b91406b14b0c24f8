import type { Analysis, Ornament } from '../harmony/analysis.ts';
import {
  type BareDissonance,
  bareDissonances,
  givesWay,
  isPrepared,
} from '../harmony/by-ear/bare-dissonances.ts';
import { keysNear } from '../harmony/by-ear/keys-near.ts';
import { isLeadingNote } from '../harmony/questions/degrees.ts';
import { clashesWith } from '../harmony/questions/dissonance.ts';
import { chordAt } from '../harmony/questions/moments.ts';
import { intervalBetween } from '../score/interval.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { sliceAt, type Tone, writtenPitch } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const upwardSuspension = defineRule({
  id: 'upward-suspension',
  name: 'Suspension resolved upward',
  family: 'dissonance',
  statement: 'A suspension resolves down by step; only a leading note that is held over may rise.',
  why: 'A suspended note hangs over the chord like a weight: the ear expects it to fall. Only the leading note has a reason to rise.',
  hints: [
    'Follow this voice from the held note to the note after it.',
    'Let the held note fall by step into the chord, or let the voice move on to the chord in time.',
    'Suspensions: preparation, suspension, resolution down by step.',
  ],
  source:
    'W. Piston, Harmony, chapter on nonharmonic tones (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 10 on non-chord notes (open to all)',
  severity: 'query',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto holds D over the tonic chord and lets it rise by a tone.',
        text: `key: C major
metre: 4/4
S: C5*2 B4*2 | C5*4 |
A: E4*2 D4*2 | D4*2 E4*2 |
T: G3*4 | G3*4 |
B: C3*2 G3*2 | C3*4 |`,
      },
    ],
    right: [
      {
        caption: 'The held note falls by step.',
        text: `key: C major
metre: 4/4
S: C5*2 B4*2 | C5*4 |
A: E4*2 F4*2 | F4*2 E4*2 |
T: G3*4 | G3*4 |
B: C3*2 G2*2 | C3*4 |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      analysis.ornaments.flatMap((ornament) => rising(analysis, ornament)),
      bareDissonances(analysis.texture).flatMap((dissonance) => risingAsHeard(analysis, dissonance)),
    ),
});

function rising(analysis: Analysis, ornament: Ornament): Occurrence[] {
  const { kind, resolution, preparation, tone } = ornament;
  if (kind !== 'retardation' || resolution === undefined) return [];
  const slice = sliceAt(analysis.texture, ornament.at);
  if (slice === undefined || clashesWith(slice, tone).length === 0) return [];
  // A leading note that is held over goes where it would have gone.
  const { semitones } = intervalBetween(tone.pitch, resolution.pitch);
  if (semitones === 1 && leadsNear(analysis, tone, ornament.at)) return [];
  return [
    about([...(preparation ? [preparation] : []), tone, resolution], {
      severity: semitones === 1 ? 'remark' : 'query',
      from: ornament.at,
      until: resolution.until,
      message: `${inVoice(tone)} is held over as a dissonance, and the ${VOICE_WORDS[ornament.voice]} goes up to ${printPitch(writtenPitch(resolution))} instead of falling by step.`,
    }),
  ];
}

/** A note that stays while others move into it, and then gives way upward, whatever chord it is taken for. */
function risingAsHeard(analysis: Analysis, dissonance: BareDissonance): Occurrence[] {
  const { slice, before, tone, after, against } = dissonance;
  const { steps, semitones } = intervalBetween(tone.pitch, after.pitch);
  const struck = against.some((other) => other.at === slice.at);
  if (!isPrepared(dissonance) || !givesWay(dissonance) || !struck || steps !== 1 || slice.strength < 2)
    return [];
  if (semitones === 1 && leadsNear(analysis, tone, slice.at)) return [];
  return [
    about([before, tone, after], {
      severity: 'remark',
      from: slice.at,
      until: after.until,
      message: `${inVoice(tone)} stays as a dissonance, and the ${VOICE_WORDS[tone.voice]} goes up to ${printPitch(writtenPitch(after))} instead of falling by step.`,
    }),
  ];
}

/** The leading note of a key near. */
function leadsNear(analysis: Analysis, tone: Tone, at: Ticks): boolean {
  const chord = chordAt(analysis, at);
  return chord === undefined || keysNear(analysis, chord, 1).some((key) => isLeadingNote(tone.pitch, key));
}
