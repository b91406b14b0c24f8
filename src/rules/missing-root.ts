import { listed } from '../english/words.ts';
import type { Analysis, Chord } from '../harmony/analysis.ts';

import { chordAt } from '../harmony/questions/moments.ts';
import { isFleeting } from '../harmony/questions/ornamental.ts';
import { belongsToKey } from '../harmony/questions/spelling.ts';
import { soundsOnly, type Voicing, voicings } from '../harmony/questions/voicing.ts';
import { intervalUp } from '../score/interval.ts';
import { phraseBreaks } from '../score/motion.ts';
import { type NoteName, printNoteName, sameNoteName } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { type Slice, toneIn } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';
import { about, besides, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const missingRoot = defineRule({
  id: 'missing-root',
  name: 'Root missing',
  family: 'chords',
  statement: 'Every chord has its root.',
  why: 'The root is what the chord is heard on; without it nobody can tell which chord is meant.',
  hints: [
    'Ask which chord you mean here, and which of its notes the four voices have.',
    'Give the root to the voice that doubles another note, best of all to the bass.',
    'Doubling and omission: only the fifth may be left out of a chord.',
  ],
  source:
    'W. Piston, Harmony, chapter on triads in four parts (from memory): fifth and, after a seventh, no other note may be left out',
  severity: 'query',
  weight: 7,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The dominant has only F# and A: its root is nowhere.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4 A4 | G4*4! |
A: G4 F#4 G4 F#4 | D4*4! |
T: D4 A3 D4 C4 | B3*4! |
B: G2 A2 B2 D3 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The bass has the root of the dominant.',
        text: `key: G major
metre: 4/4
S: B4 C5 A4*2 | G4*4! |
A: G4 G4 F#4*2 | D4*4! |
T: D4 E4 D4*2 | B3*4! |
B: G3 C3 D3*2 | G2*4! |`,
      },
    ],
  },
  check: (analysis) =>
    besides(
      voicings(analysis).flatMap((voicing) => lacking(analysis, voicing)),
      bareThirds(analysis).flatMap((third) => weigh(analysis, third)),
    ),
});

function lacking(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  if (!voicing.complete || isFleeting(analysis, chord)) return [];
  const what = soundsOnly(voicing, ['third', 'fifth'])
    ? `This reads as a chord on ${printNoteName(chord.root)}, but nobody sings ${printNoteName(chord.root)}`
    : soundsOnly(voicing, ['root', 'third']) && isDoubtful(chord)
      ? `With only ${printNoteName(chord.members.root)} and ${printNoteName(chord.members.third)} this chord seems to have lost its root`
      : undefined;
  if (what === undefined) return [];
  const tones = openingTones(voicing);
  const message = `${what}: ${listed(tones.map(inVoice))}.`;
  return [about(tones, { from: chord.at, until: chord.until, message })];
}

/**
 * Read as root and third, these chords are hardly what was meant: a diminished triad without its fifth, the
 * mediant without its fifth, a chord whose fifth the key does not have, or a six-four without its fourth. More likely
 * the root a third below is missing.
 */
function isDoubtful(chord: Chord): boolean {
  if (chord.members.seventh !== undefined) return false;
  const { degree, inversion } = chord.roman;
  // In minor the mediant is as good a chord as any other, and with its root in the bass nobody misses one.
  const mediant = degree === 3 && (chord.key.mode === 'major' || inversion !== 0);
  if (chord.quality === 'diminished' || mediant || inversion === 2) return true;
  return chord.roman.applied === undefined && !belongsToKey(chord.members.fifth, chord.key);
}

/**
 * In first inversion a triad may do without its fifth: I, IV and V, in mid-phrase, where half the voices and the top
 * one sing the root.
 * Of other first inversions it is worth a remark.
 */
function weigh(analysis: Analysis, third: Occurrence): Occurrence[] {
  const chord = chordAt(analysis, third.from);
  if (chord === undefined || chord.roman.inversion !== 1 || isDoubtful(chord)) return [third];
  const roots = third.tones.filter(({ pitch }) => sameNoteName(pitch, chord.members.root));
  const ends = [...phraseBreaks(analysis.texture)].some((at) => at > third.from && at <= third.until);
  const stands = chord.roman.applied === undefined && [1, 4, 5].includes(chord.roman.degree);
  const clear = roots.length * 2 >= third.tones.length && roots.some(({ voice }) => voice === 'S');
  if (stands && !ends && clear) return [];
  const message = third.message.replace('seems to have', 'may have');
  return [{ ...third, severity: 'remark', message }];
}

/**
 * Beats on which all that sounds is two notes a third apart, the upper one in the bass: whatever chord the analysis
 * makes of them with what lies around, as they stand they are no chord in any position.
 */
function bareThirds(analysis: Analysis): Occurrence[] {
  const runs: { slices: Slice[]; low: NoteName; high: NoteName }[] = [];
  for (const slice of analysis.texture.slices) {
    const third = thirdIn(slice);
    const open = runs.at(-1);
    if (third === undefined) continue;
    const goesOn =
      open?.slices.at(-1)?.until === slice.at &&
      sameNoteName(open.low, third.low) &&
      sameNoteName(open.high, third.high);
    if (goesOn) open.slices.push(slice);
    else runs.push({ slices: [slice], ...third });
  }
  return runs.flatMap(({ slices, low, high }) => {
    const first = slices[0]!;
    const until = slices.at(-1)!.until;
    const bass = toneIn(first, 'B');
    if (first.strength < 2 || until - first.at < beatLength(first.bar.metre)) return [];
    if (bass === undefined || !sameNoteName(bass.pitch, high)) return [];
    const tones = VOICES.flatMap((voice) => toneIn(first, voice) ?? []);
    return [
      about(tones, {
        from: first.at,
        until,
        message: `With only ${printNoteName(low)} and ${printNoteName(high)} this chord seems to have lost its root: ${listed(tones.map(inVoice))}.`,
      }),
    ];
  });
}

/** The two note names of a slice in which all four voices sing nothing but a third. */
function thirdIn(slice: Slice): { low: NoteName; high: NoteName } | undefined {
  const names: NoteName[] = [];
  for (const voice of VOICES) {
    const tone = toneIn(slice, voice);
    if (tone === undefined) return undefined;
    if (!names.some((name) => sameNoteName(name, tone.pitch))) names.push(tone.pitch);
  }
  const [a, b] = names;
  if (a === undefined || b === undefined || names.length !== 2) return undefined;
  const up = intervalUp(a, b);
  if (up.steps === 2) return { low: a, high: b };
  return up.steps === 5 ? { low: b, high: a } : undefined;
}
