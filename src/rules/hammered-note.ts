import { nextTone, phraseBreaks } from '../score/motion.ts';
import { printPitch, samePitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { type Tone, writtenPitch } from '../score/texture.ts';
import { defineRule, range } from './rule.ts';

export const hammeredNote = defineRule({
  id: 'hammered-note',
  name: 'Hammered inner note',
  family: 'melody',
  statement: 'Alto and tenor do not strike the same note over and over.',
  why: 'Inner voices are sung by people too. A part that hammers one note has no line, and the chords round it seem stuck.',
  hints: [
    'Look at how often this voice strikes the same note in a row.',
    'Let it move to another note of the chord somewhere on the way, or tie two of the notes together.',
    'Melody: every voice is a line, the inner ones as well.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, unit on melodic line (from memory); A. Butterworth, Stylistic Harmony (from memory), on lively inner parts',
  severity: 'query',
  weight: 2,
  parameters: {
    remarkable: range(5, [2, 32], 'How many times a note is struck in a row to be worth a remark.'),
    most: range(6, [2, 32], 'How many times a note may be struck in a row before it is worth a query.'),
  },
  examples: {
    wrong: [
      {
        caption: 'The alto strikes G seven times.',
        text: `key: C major
metre: 4/4
S: E5 D5 E5 D5 | C5 B4 C5*2! |
A: G4 G4 G4 G4 | G4 G4 G4*2! |
T: C4 B3 C4 B3 | E4 D4 E4*2! |
B: C3 G3 C3 G2 | C3 G3 C3*2! |`,
      },
    ],
    right: [
      {
        caption: 'The alto strikes G three times and moves on by step.',
        text: `key: C major
metre: 4/4
S: E5 D5 E5 D5 | C5 B4 C5*2! |
A: G4 G4 G4 F4 | E4 D4 E4*2! |
T: C4 B3 C4 B3 | G3 G3 G3*2! |
B: C3 G3 C3 G3 | C3 G3 C3*2! |`,
      },
    ],
  },
  check: ({ texture }, { remarkable, most }) => {
    const breaks = phraseBreaks(texture);
    return (['A', 'T'] as const)
      .flatMap((voice) => {
        const runs: Tone[][] = [];
        for (const tone of texture.tones[voice]) {
          const run = runs.at(-1);
          const last = run?.at(-1);
          const goesOn =
            last !== undefined && nextTone(texture, last) === tone && samePitch(last.pitch, tone.pitch);
          if (goesOn && !breaks.has(tone.at)) run!.push(tone);
          else runs.push([tone]);
        }
        return runs.filter((run) => run.length >= Math.min(remarkable, most));
      })
      .map((run) => ({
        ...(run.length <= most ? { severity: 'remark' as const } : {}),
        voices: [run[0]!.voice],
        from: run[0]!.at,
        until: run.at(-1)!.until,
        tones: run,
        message: `The ${VOICE_WORDS[run[0]!.voice]} strikes ${printPitch(writtenPitch(run[0]!))} ${run.length} times in a row.`,
      }))
      .sort((a, b) => a.from - b.from);
  },
});
