import { withArticle } from '../english/words.ts';
import { type Interval, intervalName } from '../score/interval.ts';
import { melodyOf } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { writtenPitch } from '../score/texture.ts';
import { defineRule, type Severity } from './rule.ts';

export const wideLeap = defineRule({
  id: 'wide-leap',
  name: 'Leap wider than an octave',
  family: 'melody',
  statement: 'No voice leaps further than an octave.',
  why: 'A line is something a choir can sing at sight. Beyond an octave the note is hard to find, and the ear loses the thread of the voice.',
  hints: [
    'Look at the two notes in this voice and count the staff places between them.',
    'Bring one of them an octave nearer, or break the way up with a chord that lies between.',
    'Melody: no leap wider than an octave.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on melodic intervals (from memory)',
  severity: 'fault',
  weight: 3,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The bass drops a tenth.',
        text: `key: D major
metre: 4/4
S: F#4 F#4 E4 D4 |
A: D4 D4 C#4 D4 |
T: A3 A3 A3 F#3 |
B: F#3 D2 A2 D3 |`,
      },
    ],
    right: [
      {
        caption: 'The bass leaps an octave: wide, but easy to sing.',
        text: `key: D major
metre: 2/4
S: F#4 F#4 |
A: D4 D4 |
T: A3 A3 |
B: D3 D2 |`,
      },
    ],
  },
  check: ({ texture }) =>
    VOICES.flatMap((voice) => melodyOf(texture, voice))
      .filter(({ interval }) => Math.abs(interval.steps) > 7)
      .map(({ from, to, interval, acrossFermata }) => ({
        ...lighter(from.voice, interval, acrossFermata),
        voices: [from.voice],
        from: from.at,
        until: to.until,
        tones: [from, to],
        message: `The ${VOICE_WORDS[from.voice]} leaps ${interval.steps > 0 ? 'up' : 'down'} ${withArticle(intervalName(interval))}, ${printPitch(writtenPitch(from))} to ${printPitch(writtenPitch(to))}${acrossFermata ? ', to begin the next phrase' : ''}.`,
      }))
      .sort((a, b) => a.from - b.from),
});

/**
 * A new phrase may begin anywhere: the singer has breathed and heard the chord. And a bass that has come to the end of its
 * range may take a step in the other octave, as a ninth.
 */
function lighter(voice: VoiceName, interval: Interval, acrossFermata: boolean): { severity?: Severity } {
  if (acrossFermata) return { severity: 'remark' };
  return voice === 'B' && Math.abs(interval.steps) === 8 ? { severity: 'query' } : {};
}
