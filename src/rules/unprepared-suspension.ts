import { listed } from '../english/words.ts';
import type { Analysis, Ornament } from '../harmony/analysis.ts';
import {
  type BareDissonance,
  bareDissonances,
  givesWay,
  isMetAgain,
  placesTo,
} from '../harmony/by-ear/bare-dissonances.ts';
import { clashesWith } from '../harmony/questions/dissonance.ts';
import { isStep } from '../harmony/questions/ornamental.ts';
import { previousTone } from '../score/motion.ts';
import { printPitch, sameNoteName, staffPlace } from '../score/pitch.ts';
import { barAt, metricalStrength } from '../score/place.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { sliceAt, type Texture, writtenPitch } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice, named } from './wording.ts';

export const unpreparedSuspension = defineRule({
  id: 'unprepared-suspension',
  name: 'Suspension unprepared',
  family: 'dissonance',
  statement:
    'A dissonance on the beat that resolves down by step is prepared by the same note in the same voice.',
  why: 'A suspension is a chord note that stays behind while the harmony moves on; if the voice leaps into it, there is nothing to stay behind, and the clash comes as a shock.',
  hints: [
    'Look at the note that this voice sings just before the dissonance.',
    'Let the voice already have the note in the chord before, or go straight to the note of resolution.',
    'Suspensions: preparation, suspension, resolution.',
  ],
  source:
    'W. Piston, Harmony, chapter on nonharmonic tones (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 10 on non-chord notes (open to all)',
  severity: 'fault',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto leaps to the fourth above the bass instead of holding it over.',
        text: `key: G major
metre: 4/4
S: D5 C5 A4*2 | G4*4! |
A: G4 E4 G4 F#4 | G4*4! |
T: B3 G3 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The fourth is there in the chord before, is held over, and falls to the third.',
        text: `key: G major
metre: 4/4
S: B4 A4 A4*2 | G4*4! |
A: G4 G4 G4 F#4 | G4*4! |
T: D4 E4 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      analysis.ornaments.flatMap((ornament) => unprepared(analysis, ornament)),
      bareDissonances(analysis.texture).flatMap((dissonance) =>
        unpreparedAsHeard(analysis.texture, dissonance),
      ),
    ),
});

function unprepared(analysis: Analysis, ornament: Ornament): Occurrence[] {
  if (ornament.kind !== 'appoggiatura' || ornament.resolution === undefined) return [];
  const { texture } = analysis;
  const before = previousTone(texture, ornament.tone);
  const slice = sliceAt(texture, ornament.at);
  const bar = barAt(texture.score, ornament.at);
  if (before === undefined || slice === undefined || isStep(before, ornament.tone)) return [];
  // Off the beat it is a decoration, not a suspension; upward it is no suspension at all.
  const falls = staffPlace(ornament.resolution.pitch) < staffPlace(ornament.tone.pitch);
  if (!falls || metricalStrength(bar, ornament.at) < 2) return [];
  const clashes = clashesWith(slice, ornament.tone);
  if (clashes.length === 0) return [];
  return [
    about([before, ornament.tone, ornament.resolution, ...clashes], {
      severity: ornament.until - ornament.at >= beatLength(bar.metre) / 2 ? 'fault' : 'query',
      from: ornament.at,
      until: ornament.resolution.until,
      message: `${inVoice(ornament.tone)} is dissonant with ${listed(clashes.map(named))} and falls to ${printPitch(writtenPitch(ornament.resolution))} like a suspension, but the ${VOICE_WORDS[ornament.voice]} leaps to it from ${printPitch(writtenPitch(before))}.`,
    }),
  ];
}

/** A note leapt to on the beat that is dissonant against one that stays or comes back, and gives way to it downward by step. */
function unpreparedAsHeard(texture: Texture, dissonance: BareDissonance): Occurrence[] {
  const { slice, before, tone, after, against } = dissonance;
  if (
    slice.strength < 2 ||
    tone.at !== slice.at ||
    Math.abs(placesTo(before, tone)) <= 1 ||
    placesTo(tone, after) !== -1
  )
    return [];
  if (sameNoteName(before.pitch, tone.pitch)) return [];
  if (!givesWay(dissonance) && !isMetAgain(texture, dissonance)) return [];
  return [
    about([before, tone, after, ...against], {
      severity: 'remark',
      from: slice.at,
      until: after.until,
      message: `${inVoice(tone)} is dissonant with ${listed(against.map(named))} and falls to ${printPitch(writtenPitch(after))} like a suspension, but the ${VOICE_WORDS[tone.voice]} leaps to it from ${printPitch(writtenPitch(before))}.`,
    }),
  ];
}
