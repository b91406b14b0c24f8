import { capitalised } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { sameHarmony } from '../harmony/questions/functions.ts';
import { chordAt } from '../harmony/questions/moments.ts';
import { intervalBetween, isDiminishedFifth, isPerfectFifth } from '../score/interval.ts';
import { crossesFermata, motionOf, PAIRS, type Pair } from '../score/motion.ts';
import { printPitch } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { asWritten, type Move, type Tone, type Transition, writtenPitch } from '../score/texture.ts';
import { choice, defineRule, type Occurrence, SEVERITIES, type Severity } from './rule.ts';
import { inOrder } from './wording.ts';

export const unequalFifths = defineRule({
  id: 'unequal-fifths',
  name: 'Unequal fifths',
  family: 'consecutives',
  statement:
    'A diminished fifth is not followed by a perfect fifth in the same direction, least of all with the bass; the other way round is fine.',
  why: 'A diminished fifth wants to close inwards to a third. Going on in parallel to a perfect fifth leaves that wish unheard, and sounds like parallel fifths.',
  hints: [
    'Look at these two voices: the first interval is a diminished fifth, and it pulls its two notes together.',
    'Let the lower of the two rise by step and the upper fall by step, each where it is pulled.',
    'Part-writing: unequal fifths; from perfect to diminished is allowed, from diminished to perfect is not, save among upper voices over a bass that rises with them.',
  ],
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on unequal fifths (from memory)',
  disagreement:
    'S. Kostka and D. Payne forbid a diminished fifth that goes on to a perfect one only where the bass has a part in it, and E. Aldwell and C. Schachter are as lenient with upper voices; stricter classroom books forbid it between any two voices, and let only the perfect fifth come first (all from memory). A profile in which it is a query, and a fault with the bass, follows the former; one in which it is always a fault follows the latter.',
  severity: 'query',
  weight: 3,
  parameters: {
    withBass: choice('fault', SEVERITIES, 'How seriously to take it when one of the two voices is the bass.'),
  },
  examples: {
    wrong: [
      {
        caption: 'Alto and tenor go from a diminished to a perfect fifth, both upwards.',
        text: `key: C major
metre: 4/4
S: D5 E5 D5 C5 |
A: F4 G4 G4 E4 |
T: B3 C4 B3 C4 |
B: D3 C3 G2 C3 |`,
      },
    ],
    right: [
      {
        caption: 'The diminished fifth closes to a third.',
        text: `key: C major
metre: 4/4
S: F5 E5 D5 C5 |
A: G4 G4 G4 E4 |
T: D4 C4 B3 C4 |
B: B2 C3 G2 C3 |`,
      },
      {
        caption: 'From a perfect to a diminished fifth: nothing wrong with that.',
        text: `key: C major
metre: 3/4
S: G4 F4 E4 | D4 C4*2 |
A: C4 B3 C4 | B3 C4*2 |
T: E3 G3 G3 | G3 E3*2 |
B: C3 D3 C3 | G2 C3*2 |`,
      },
    ],
  },
  check: (analysis, { withBass }) =>
    analysis.texture.transitions
      .flatMap((transition) => PAIRS.flatMap((pair) => unequal(analysis, transition, pair, withBass)))
      .sort((a, b) => a.from - b.from),
});

function unequal(analysis: Analysis, transition: Transition, pair: Pair, withBass: Severity): Occurrence[] {
  const upper = transition.moves[pair[0]];
  const lower = transition.moves[pair[1]];
  if (!upper || !lower || motionOf(upper, lower) !== 'similar') return [];
  // As it is written or as it is meant, where a note has the wrong letter.
  if (![asWritten, asMeant].some((spelt) => closesUnequally(upper, lower, spelt))) return [];
  const before = chordAt(analysis, transition.from.at);
  const after = chordAt(analysis, transition.to.at);
  const still = before !== undefined && after !== undefined && sameHarmony(before, after);
  const bass = pair[1] === 'B';
  const light = still || risesInTenths(transition, pair) || passesUpwards(transition, pair);
  const severity = crossesFermata(transition) ? 'remark' : bass ? withBass : light ? 'remark' : 'query';
  const tones = (which: 'from' | 'to') =>
    `${printPitch(writtenPitch(upper[which]))}–${printPitch(writtenPitch(lower[which]))}`;
  return [
    {
      severity,
      voices: pair,
      from: Math.max(upper.from.at, lower.from.at),
      until: Math.min(upper.to.until, lower.to.until),
      tones: inOrder([upper.from, upper.to, lower.from, lower.to]),
      message: `${capitalised(VOICE_WORDS[pair[0]])} and ${VOICE_WORDS[pair[1]]} go in the same direction from a diminished to a perfect fifth: ${tones('from')} to ${tones('to')}.`,
    },
  ];
}

function closesUnequally(upper: Move, lower: Move, spelt: (tone: Tone) => Tone): boolean {
  const between = (which: 'from' | 'to') =>
    intervalBetween(spelt(lower[which]).pitch, spelt(upper[which]).pitch);
  return isDiminishedFifth(between('from')) && isPerfectFifth(between('to'));
}

function asMeant(tone: Tone): Tone {
  return tone;
}

/**
 * The one place where textbooks allow it: I–V43–I6 or I–viio6–I6, the bass climbing in tenths with the upper of the two
 * voices, so that both lead to the next chord of one rising line.
 */
function risesInTenths(transition: Transition, pair: Pair): boolean {
  const upper = transition.moves[pair[0]];
  const bass = transition.moves.B;
  if (upper === undefined || bass === undefined || bass.interval.steps !== 1) return false;
  const third = (which: 'from' | 'to') =>
    ((intervalBetween(bass[which].pitch, upper[which].pitch).steps % 7) + 7) % 7 === 2;
  return upper.interval.steps === 1 && third('from') && third('to');
}

/** Off the beat, the leading note rises to the tonic and the voice above it climbs along by step: heard in passing. */
function passesUpwards({ from, moves }: Transition, pair: Pair): boolean {
  return from.strength < 2 && pair.every((voice) => moves[voice]?.interval.steps === 1);
}
