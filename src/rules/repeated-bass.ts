import type { Analysis } from '../harmony/analysis.ts';
import { chordAt } from '../harmony/questions/moments.ts';
import { ornamentOf } from '../harmony/questions/ornaments.ts';
import { melodyOf, phraseBreaks } from '../score/motion.ts';
import { printPitch, samePitch } from '../score/pitch.ts';
import { barAt, metricalStrength } from '../score/place.ts';
import { type Texture, type Tone, writtenPitch } from '../score/texture.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const repeatedBass = defineRule({
  id: 'repeated-bass',
  name: 'Bass note repeated on to a strong beat',
  family: 'melody',
  statement: 'The bass does not repeat its note from a weak beat to a strong one.',
  why: 'The bass marks the metre. When it repeats its note over the barline, the strong beat brings nothing new and the music treads water.',
  hints: [
    'Look at the bass on the strong beat: it has the note of the beat before.',
    'Change the bass on the weak beat or on the strong one, or let it leap an octave.',
    'Bass line: a new note on the strong beat; a repeated one is good at the beginning of a phrase, or where it becomes a dissonance.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, on bass notes repeated over the barline (from memory); W. Piston, Harmony, chapter on harmonic rhythm (from memory). Allowed at the beginning of a piece or phrase',
  severity: 'query',
  weight: 3,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The bass repeats its note over the barline.',
        text: `key: G major
metre: 2/4
S: B4 A4 | B4 G4 |
A: D4 D4 | D4 D4 |
T: G3 F#3 | G3 B3 |
B: G3 D3 | D3 G2 |`,
      },
    ],
    right: [
      {
        caption: 'The bass has a new note on the strong beat.',
        text: `key: G major
metre: 2/4
S: B4 A4 | B4 G4 |
A: D4 F#4 | D4 D4 |
T: G3 A3 | G3 B3 |
B: G3 D3 | G2 G2 |`,
      },
    ],
  },
  check: (analysis) => {
    const { texture } = analysis;
    const breaks = phraseBreaks(texture);
    const found = melodyOf(texture, 'B').flatMap(({ from, to, interval, acrossFermata }) => {
      if (interval.steps !== 0 || interval.semitones !== 0 || acrossFermata) return [];
      const before = metricalStrength(barAt(texture.score, from.at), from.at);
      const after = metricalStrength(barAt(texture.score, to.at), to.at);
      if (after < 3 || before >= after) return [];
      // In a bar of the wrong length nobody can tell which beats are strong.
      const askew = barAt(texture.score, from.at).misfits.length > 0;
      const opens = from.index === 0 || breaks.has(from.at);
      return [
        {
          ...(opens || askew || tensed(analysis, to) || (after === 3 && !isRoot(analysis, to))
            ? { severity: 'remark' as const }
            : {}),
          voices: ['B' as const],
          from: from.at,
          until: to.until,
          tones: [from, to],
          message: `The bass repeats ${printPitch(writtenPitch(to))} from a weak beat to a strong one${opens ? ', at the beginning of the phrase' : ''}.`,
        },
      ];
    });
    return runsOf(texture, found).map((run) => (run.length === 1 ? run[0]! : standing(texture, run)));
  },
});

/** Those that go on from one another: the same note struck again and again. */
function runsOf(texture: Texture, found: readonly Occurrence[]): Occurrence[][] {
  const breaks = phraseBreaks(texture);
  const runs: Occurrence[][] = [];
  for (const occurrence of found) {
    const last = runs.at(-1);
    const before = last?.at(-1)?.tones[1];
    const between = before && texture.tones.B.slice(before.index, occurrence.tones[1]!.index + 1);
    const goesOn = between?.every(
      (tone, i) =>
        samePitch(tone.pitch, before!.pitch) &&
        (i === 0 || (tone.at === between[i - 1]!.until && !breaks.has(tone.at))),
    );
    if (last !== undefined && goesOn) last.push(occurrence);
    else runs.push([occurrence]);
  }
  return runs;
}

/** A bass that stands still for so long is one matter, as heavy as the gravest of its repeats. */
function standing(texture: Texture, run: readonly Occurrence[]): Occurrence {
  const [first, last] = [run[0]!.tones[0]!, run.at(-1)!.tones[1]!];
  const tones = texture.tones.B.slice(first.index, last.index + 1);
  const heavy = run.find(({ severity }) => severity === undefined) ?? run[0]!;
  return {
    ...(heavy.severity === undefined ? {} : { severity: heavy.severity }),
    voices: ['B'],
    from: first.at,
    until: last.until,
    tones,
    message: `The bass stands still: it strikes ${printPitch(writtenPitch(last))} ${tones.length} times, and repeats it from a weak beat to a strong one ${run.length === 2 ? 'twice' : `${run.length} times`}.`,
  };
}

/** The repeated note becomes a dissonance that wants to move on: a suspension, or the seventh of the chord. */
function tensed(analysis: Analysis, tone: Tone): boolean {
  return (
    ornamentOf(analysis, tone, tone.at) !== undefined || chordAt(analysis, tone.at)?.roman.inversion === 3
  );
}

/** The note is the root of the chord it comes with: inside the bar another member over it is a new colour. */
function isRoot(analysis: Analysis, tone: Tone): boolean {
  return chordAt(analysis, tone.at)?.roman.inversion === 0;
}
