import type { Analysis } from '../harmony/analysis.ts';
import { chordAt, sameHarmony } from '../harmony/questions/moments.ts';
import { crossesFermata, NEIGHBOURS, type Pair } from '../score/motion.ts';
import { printPitch, semitone } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import { type Transition, writtenPitch } from '../score/texture.ts';
import { defineRule, type Occurrence, range } from './rule.ts';
import { inOrder } from './wording.ts';

export const voiceOverlap = defineRule({
  id: 'voice-overlap',
  name: 'Overlapping voices',
  family: 'spacing and range',
  statement:
    'No voice moves above the note that the voice over it has just left, nor below the note of the voice under it.',
  why: 'The ear joins notes that lie close. When a voice steps over where its neighbour has just been, it hears a line that nobody sings.',
  hints: [
    'Look at the note one voice leaves and the note its neighbour goes to: they have passed each other.',
    'Let the two voices move in opposite directions, or move the leaping one to a nearer note of the chord.',
    'Part-writing: avoid overlap between neighbouring voices; inside one chord it does little harm.',
  ],
  source: 'Aldwell and Schachter, Harmony and Voice Leading, on overlap (from memory)',
  severity: 'query',
  weight: 3,
  parameters: {
    slight: range(
      4,
      [0, 12],
      'How many semitones one voice may go beyond its neighbour’s last note and be worth no more than a remark.',
    ),
  },
  examples: {
    wrong: [
      {
        caption: 'The tenor leaps above the note that the alto has just left.',
        text: `key: F major
metre: 2/4
S: A4 Bb4 |
A: C4 F4 |
T: A3 D4 |
B: F3 Bb2 |`,
      },
    ],
    right: [
      {
        caption: 'The tenor moves by step and stays below.',
        text: `key: F major
metre: 2/4
S: A4 Bb4 |
A: C4 D4 |
T: A3 F3 |
B: F3 Bb2 |`,
      },
    ],
  },
  check: (analysis, { slight }) =>
    analysis.texture.transitions
      .flatMap((transition) => {
        const light = crossesFermata(transition) || staysInHarmony(analysis, transition);
        return NEIGHBOURS.flatMap((pair) => overlap(transition, pair, light, slight));
      })
      .sort((a, b) => a.from - b.from),
});

function staysInHarmony(analysis: Analysis, { from, to }: Transition): boolean {
  const before = chordAt(analysis, from.at);
  const after = chordAt(analysis, to.at);
  return before !== undefined && after !== undefined && sameHarmony(before, after);
}

function overlap(transition: Transition, pair: Pair, light: boolean, slight: number): Occurrence[] {
  const upper = transition.moves[pair[0]];
  const lower = transition.moves[pair[1]];
  if (upper === undefined || lower === undefined || upper.held || lower.held) return [];
  const [high, highNext] = [semitone(upper.from.pitch), semitone(upper.to.pitch)];
  const [low, lowNext] = [semitone(lower.from.pitch), semitone(lower.to.pitch)];
  // Crossed voices are another matter, and another rule's.
  if (high < low || highNext < lowNext) return [];
  const rising = lowNext > high;
  if (!rising && highNext >= low) return [];
  const [mover, left] = rising ? [lower, upper] : [upper, lower];
  const excess = rising ? lowNext - high : low - highNext;
  // Inside one chord the voices only change places in it, and a new phrase begins afresh: a small overlap there is nothing.
  if (light && excess <= slight) return [];
  return [
    {
      ...(light || excess <= slight ? { severity: 'remark' as const } : {}),
      voices: pair,
      from: Math.max(upper.from.at, lower.from.at),
      until: Math.min(upper.to.until, lower.to.until),
      tones: inOrder([upper.from, upper.to, lower.from, lower.to]),
      message: `The ${VOICE_WORDS[mover.voice]} moves ${rising ? 'up' : 'down'} to ${printPitch(writtenPitch(mover.to))}, ${rising ? 'above' : 'below'} the ${printPitch(writtenPitch(left.from))} that the ${VOICE_WORDS[left.voice]} has just left.`,
    },
  ];
}
