import { withArticle } from '../english/words.ts';
import { intervalName, intervalQuality } from '../score/interval.ts';
import { melodyOf } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { writtenPitch } from '../score/texture.ts';
import { defineRule } from './rule.ts';

export const seventhLeap = defineRule({
  id: 'seventh-leap',
  name: 'Leap of a seventh',
  family: 'melody',
  statement: 'No voice leaps a major or minor seventh.',
  why: 'A seventh is a dissonance: sung as a leap it misses its mark by a step from the octave, and the line has no sense of where it is going.',
  hints: [
    'Look at the two notes of the leap: they are one staff place short of an octave.',
    'Move by step in the other direction instead, or put a note of the chord between.',
    'Melody: avoid leaps of a seventh; the bass may use one in place of a step, and then steps back.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on melodic intervals (from memory)',
  severity: 'fault',
  weight: 3,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto leaps up a minor seventh.',
        text: `key: G major
metre: 3/4
S: D5 C5 B4 |
A: B3 A4 G4 |
T: G3 F#3 G3 |
B: G3 D3 G2 |`,
      },
    ],
    right: [
      {
        caption: 'The alto steps down to the note an octave lower.',
        text: `key: G major
metre: 3/4
S: G4 A4 G4 |
A: B3 A3 B3 |
T: G3 F#3 G3 |
B: G3 D3 G2 |`,
      },
      {
        caption: 'An octave is no seventh: the bass may leap it.',
        text: `key: G major
metre: 2/4
S: D5 D5 |
A: B4 B4 |
T: G4 G4 |
B: G3 G2 |`,
      },
    ],
  },
  check: ({ texture }) =>
    VOICES.flatMap((voice) => {
      const moves = melodyOf(texture, voice);
      return moves.flatMap(({ from, to, interval, acrossFermata }, i) => {
        const quality = intervalQuality(interval);
        if (Math.abs(interval.steps) !== 6 || (quality !== 'major' && quality !== 'minor')) return [];
        const next = moves[i + 1];
        const stepsBack =
          next !== undefined &&
          next.from === to &&
          Math.abs(next.interval.steps) === 1 &&
          next.interval.steps > 0 !== interval.steps > 0;
        // In the bass it stands for a step, an octave away; that it steps back makes it one line again.
        const light = acrossFermata || (voice === 'B' && stepsBack);
        return [
          {
            ...(light
              ? { severity: 'remark' as const }
              : voice === 'B'
                ? { severity: 'query' as const }
                : {}),
            voices: [voice],
            from: from.at,
            until: to.until,
            tones: [from, to],
            message: `The ${VOICE_WORDS[voice]} leaps ${interval.steps > 0 ? 'up' : 'down'} ${withArticle(intervalName(interval))}, ${printPitch(writtenPitch(from))} to ${printPitch(writtenPitch(to))}${acrossFermata ? ', to begin the next phrase' : ''}.`,
          },
        ];
      });
    }).sort((a, b) => a.from - b.from),
});
