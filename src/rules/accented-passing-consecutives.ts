import { type Consecutive, consecutivesIn } from '../harmony/questions/consecutives.ts';
import { isOuterPair } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { writtenPitch } from '../score/texture.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const accentedPassingConsecutives = defineRule({
  id: 'accented-passing-consecutives',
  name: 'Accented passing note makes consecutives',
  family: 'dissonance',
  statement: 'An accented passing note makes no consecutive fifths or octaves with another voice.',
  why: 'On the beat a passing note is heard as plainly as a chord note, so the fifths or octaves it makes are heard as plainly too.',
  hints: [
    'Find the passing note that stands on the beat and the voice that moves in parallel with it.',
    'Put the passing note off the beat, or let the other voice move the other way.',
    'Part-writing: accented passing notes are judged like chord notes for consecutives.',
  ],
  source:
    'W. Piston, Harmony, on nonharmonic tones and parallel motion (from memory); R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 10 on non-chord notes (open to all). That accented notes don’t hide consecutives is taught more or less strictly',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'On the third beat the soprano passes through G, a fifth above the tenor, as it was before.',
        text: `key: C major
metre: 4/4
S: A4 A4 (G4 F4) E4 | D4*2 C4*2 |
A: F4 F4 F4 C4 | B3*2 C4*2 |
T: C4 (D4 A3) C4 G3 | G3*2 E3*2 |
B: F3 D3 A2 C3 | G2*2 C3*2 |`,
      },
    ],
    right: [
      {
        caption: 'The passing note comes off the beat, before the tenor moves.',
        text: `key: C major
metre: 4/4
S: A4 (A4 G4) F4 E4 | D4*2 C4*2 |
A: F4 F4 F4 C4 | B3*2 C4*2 |
T: C4 D4 C4 G3 | G3*2 E3*2 |
B: F3 D3 A2 C3 | G2*2 C3*2 |`,
      },
    ],
  },
  check: (analysis) => consecutivesIn(analysis).flatMap((consecutive) => accented(consecutive)),
});

function accented(consecutive: Consecutive): Occurrence[] {
  if (consecutive.motion !== 'similar' || consecutive.acrossFermata) return [];
  const ornament = consecutive.ornaments.find(({ kind }) => kind === 'accented passing');
  if (ornament === undefined) return [];
  const { first, second } = consecutive;
  const interval = `${consecutive.interval}s`;
  return [
    about([...first, ...second], {
      ...(isPlainParallel(consecutive) ? { severity: 'remark' as const } : {}),
      from: consecutive.from,
      until: consecutive.until,
      message: `${inVoice(ornament.tone)}, a passing note on the beat, makes parallel ${interval} between ${VOICE_WORDS[first[0].voice]} and ${VOICE_WORDS[first[1].voice]}: ${printPitch(writtenPitch(first[1]))}–${printPitch(writtenPitch(first[0]))} to ${printPitch(writtenPitch(second[1]))}–${printPitch(writtenPitch(second[0]))}.`,
    }),
  ];
}

/** The rules about parallels take it up as it stands: that a passing note makes them is only said beside it. */
function isPlainParallel({ way, pair }: Consecutive): boolean {
  return way === 'direct' || way === 'decorated' || (way === 'on beats' && isOuterPair(pair));
}
