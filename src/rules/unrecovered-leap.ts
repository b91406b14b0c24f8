import { withArticle } from '../english/words.ts';
import { intervalName } from '../score/interval.ts';
import { isInner, type MelodicMove, melodyOf } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { writtenPitch } from '../score/texture.ts';
import { defineRule, range, type Severity } from './rule.ts';

export const unrecoveredLeap = defineRule({
  id: 'unrecovered-leap',
  name: 'Large leap not followed by a step back',
  family: 'melody',
  statement: 'After a large leap a voice turns round and moves back by step.',
  why: 'A leap opens a gap in the line, and the ear waits for it to be filled. A line that goes on in the same direction runs away from itself.',
  hints: [
    'Look at what this voice does right after the leap.',
    'Let it step back towards the place it came from, or make the leap smaller.',
    'Melody: a large leap is followed by a step in the opposite direction.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on melodic motion (from memory)',
  severity: 'query',
  weight: 2,
  parameters: {
    smallest: range(
      6,
      [4, 8],
      'The smallest leap that is worth a query, as an interval number: 6 is a sixth.',
    ),
    remarkable: range(
      5,
      [4, 8],
      'The smallest leap of an upper voice that is worth a remark when the line goes on the same way.',
    ),
  },
  examples: {
    wrong: [
      {
        caption: 'The tenor leaps up a sixth and leaps on up.',
        text: `key: G major
metre: 3/4
S: G4 G4 F#4 | G4*3 |
A: B3 D4 D4 | D4*3 |
T: D3 B3 D4 | B3*3 |
B: G2 G2 D3 | G2*3 |`,
      },
    ],
    right: [
      {
        caption: 'The tenor leaps up a sixth and steps back.',
        text: `key: G major
metre: 3/4
S: G4 G4 F#4 | G4*3 |
A: B3 D4 D4 | D4*3 |
T: D3 B3 A3 | B3*3 |
B: G2 G2 D3 | G2*3 |`,
      },
    ],
  },
  check: ({ texture }, { smallest, remarkable }) =>
    VOICES.flatMap((voice) => {
      const moves = melodyOf(texture, voice);
      return moves.flatMap((leap, i) => {
        const size = Math.abs(leap.interval.steps);
        // Leaps wider than an octave have a rule of their own, and a bass leaps octaves as it likes.
        if (size > 7 || leap.acrossFermata || (voice === 'B' && size === 7)) return [];
        const next = moves[i + 1];
        if (next === undefined || next.from !== leap.to || next.acrossFermata) return [];
        const severity = weigh(leap, next, smallest, remarkable);
        if (severity === undefined) return [];
        const { from, to, interval } = leap;
        return [
          {
            severity,
            voices: [voice],
            from: from.at,
            until: next.to.until,
            tones: [from, to, next.to],
            message: `The ${VOICE_WORDS[voice]} leaps ${interval.steps > 0 ? 'up' : 'down'} ${withArticle(intervalName(interval))}, ${printPitch(writtenPitch(from))} to ${printPitch(writtenPitch(to))}, and ${goesOn(leap, next)}.`,
          },
        ];
      });
    }).sort((a, b) => a.from - b.from),
});

/**
 * For an inner voice to leap on the same way is a query. To go on by step is a remark, and so is all of it in the soprano,
 * which is mostly given, and in the bass, and a smaller leap of an upper voice. To turn back, but by leap, is a remark.
 */
function weigh(
  leap: MelodicMove,
  next: MelodicMove,
  smallest: number,
  remarkable: number,
): Severity | undefined {
  const { voice } = leap.from;
  const size = Math.abs(leap.interval.steps) + 1;
  const turns = next.interval.steps > 0 !== leap.interval.steps > 0;
  if (next.interval.steps === 0 || (turns && Math.abs(next.interval.steps) === 1)) return undefined;
  if (size < smallest) return !turns && voice !== 'B' && size >= remarkable ? 'remark' : undefined;
  if (turns) return voice === 'B' ? undefined : 'remark';
  return isInner(voice) && Math.abs(next.interval.steps) > 1 ? 'query' : 'remark';
}

function goesOn(leap: MelodicMove, next: MelodicMove): string {
  const turns = next.interval.steps > 0 !== leap.interval.steps > 0;
  const to = printPitch(writtenPitch(next.to));
  return turns ? `turns back by leap to ${to}` : `goes on in the same direction to ${to}`;
}
