import { withArticle } from '../english/words.ts';
import { intervalBetween, intervalName } from '../score/interval.ts';
import { type MelodicMove, melodyOf } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { writtenPitch } from '../score/texture.ts';
import { defineRule } from './rule.ts';

export const outlinedSeventh = defineRule({
  id: 'outlined-seventh',
  name: 'Two leaps outlining a seventh or ninth',
  family: 'melody',
  statement: 'Two leaps in one direction do not add up to a seventh or a ninth.',
  why: 'The ear adds the two leaps together and hears the dissonance between the first note and the last.',
  hints: [
    'Look at three notes in a row in this voice: the first and the third are a seventh or a ninth apart.',
    'Make one of the two leaps a step, or turn round after the first.',
    'Melody: two leaps in one direction should outline a consonance.',
  ],
  source: 'K. Jeppesen, Counterpoint, on leaps in one direction (from memory); common practice in four parts',
  severity: 'query',
  weight: 2,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The tenor leaps a fourth and another fourth: a seventh in all.',
        text: `key: F major
metre: 3/4
S: G4 F4 F4 | E4 F4*2 |
A: E4 C4 D4 | C4 C4*2 |
T: C3 F3 Bb3 | G3 A3*2 |
B: C3 A2 Bb2 | C3 F2*2 |`,
      },
    ],
    right: [
      {
        caption: 'A third and a fourth: a sixth in all, which is a consonance.',
        text: `key: C major
metre: 3/4
S: G4 G4 A4 | F4 E4*2 |
A: E4 C4 C4 | B3 C4*2 |
T: C3 E3 A3 | G3 G3*2 |
B: C3 C3 F2 | G2 C3*2 |`,
      },
    ],
  },
  check: ({ texture }) =>
    VOICES.flatMap((voice) => {
      const moves = melodyOf(texture, voice);
      return moves.flatMap((first, i) => {
        const second = moves[i + 1];
        if (second === undefined || second.from !== first.to) return [];
        if (first.acrossFermata || second.acrossFermata) return [];
        const [a, b] = [first.interval.steps, second.interval.steps];
        if (Math.abs(a) < 2 || Math.abs(b) < 2 || a > 0 !== b > 0) return [];
        const total = intervalBetween(first.from.pitch, second.to.pitch);
        if (Math.abs(total.steps) !== 6 && Math.abs(total.steps) !== 8) return [];
        const tones = [first.from, first.to, second.to];
        return [
          {
            // The bass leaps from root to root, and its leaps are heard as harmony; a step back makes good for much.
            ...(voice === 'B' || stepsBack(moves[i + 2], second) ? { severity: 'remark' as const } : {}),
            voices: [voice],
            from: first.from.at,
            until: second.to.until,
            tones,
            message: `The ${VOICE_WORDS[voice]} leaps twice ${a > 0 ? 'up' : 'down'}, ${tones.map((tone) => printPitch(writtenPitch(tone))).join('–')}: ${withArticle(intervalName(total))} in all.`,
          },
        ];
      });
    }).sort((x, y) => x.from - y.from),
});

function stepsBack(next: MelodicMove | undefined, leap: MelodicMove): boolean {
  return (
    next !== undefined &&
    next.from === leap.to &&
    Math.abs(next.interval.steps) === 1 &&
    next.interval.steps > 0 !== leap.interval.steps > 0
  );
}
