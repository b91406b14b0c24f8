import type { Analysis } from '../harmony/analysis.ts';
import { sameHarmony } from '../harmony/questions/functions.ts';
import { chordAt } from '../harmony/questions/moments.ts';
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
  source: 'E. Aldwell and C. Schachter, Harmony and Voice Leading, on overlap (from memory)',
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
        caption: 'The alto leaps below the note that the tenor has just left.',
        text: `key: C major
metre: 3/4
S: G4 G4 E4 |
A: G4 B3 C4 |
T: E4 G3 G3 |
B: C3 G2 C3 |`,
      },
    ],
    right: [
      {
        caption: 'The alto keeps its note, above the tenor.',
        text: `key: C major
metre: 3/4
S: C5 D5 C5 |
A: G4 G4 E4 |
T: E4 B3 C4 |
B: C3 G2 C3 |`,
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
