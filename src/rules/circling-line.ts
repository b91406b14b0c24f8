import { nextTone, phraseBreaks } from '../score/motion.ts';
import { comparePitch, printPitch, samePitch, staffPlace } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import type { Texture, Tone } from '../score/texture.ts';
import { defineRule, range } from './rule.ts';

export const circlingLine = defineRule({
  id: 'circling-line',
  name: 'Line that circles',
  family: 'melody',
  statement: 'Soprano and bass go somewhere; they do not circle round the same two or three notes.',
  why: 'The outer voices carry the shape of a phrase. A line that keeps coming back to the same note within a third has no high point and no aim.',
  hints: [
    'Look at the highest and the lowest note of this stretch, and at how often the line comes back.',
    'Give the line one high or low point to move towards, by another position or inversion of some of the chords.',
    'Melody: a good line has a direction and one climax.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading, unit on melodic line (from memory); K. Jeppesen, Counterpoint, on the single line (from memory)',
  severity: 'query',
  weight: 2,
  parameters: {
    notes: range(8, [5, 32], 'How many notes in a row within the compass of a third are called circling.'),
    returns: range(4, [2, 16], 'How many times at least the line has come to one of its notes.'),
  },
  examples: {
    wrong: [
      {
        caption: 'The bass turns round C for two bars.',
        text: `key: C major
metre: 4/4
S: C5 D5 C5 B4 | C5 D5 C5 A4 | B4*2 C5*2 |
A: E4 D4 E4 F4 | E4 D4 E4 D4 | D4*2 E4*2 |
T: G3 G3 C4 G3 | G3 G3 G3 F3 | G3*2 G3*2 |
B: C3 B2 C3 D3 | C3 B2 C3 D3 | G2*2 C3*2 |`,
      },
    ],
    right: [
      {
        caption: 'The bass climbs to its highest note and falls back to the close.',
        text: `key: C major
metre: 4/4
S: G4 G4 G4 F4 | E4 D4 C4*2 |
A: E4 D4 C4 C4 | C4 B3 C4*2 |
T: C4 B3 C4 A3 | G3 G3 E3*2 |
B: C3 G3 E3 F3 | G3 G2 C3*2 |`,
      },
    ],
  },
  check: ({ texture }, { notes, returns }) =>
    (['S', 'B'] as const)
      .flatMap((voice) => circles(texture, voice, notes, returns))
      .map((tones) => {
        const pitches = tones.map((tone) => tone.pitch).sort(comparePitch);
        return {
          // The tune is given; the bass is the pupil's own.
          ...(tones[0]!.voice === 'S' ? { severity: 'remark' as const } : {}),
          voices: [tones[0]!.voice],
          from: tones[0]!.at,
          until: tones.at(-1)!.until,
          tones,
          message: `The ${VOICE_WORDS[tones[0]!.voice]} circles between ${printPitch(pitches[0]!)} and ${printPitch(pitches.at(-1)!)} for ${tones.length} notes.`,
        };
      })
      .sort((a, b) => a.from - b.from),
});

/** Stretches as long as they go within a third, in one phrase, in which the line comes to one pitch often enough. */
function circles(texture: Texture, voice: 'S' | 'B', notes: number, returns: number): Tone[][] {
  const breaks = phraseBreaks(texture);
  const found: Tone[][] = [];
  let run: Tone[] = [];
  let [lowest, highest] = [Infinity, -Infinity];
  const startAnew = (tones: Tone[]) => {
    run = tones;
    [lowest, highest] = [Math.min(...tones.map(placeOf)), Math.max(...tones.map(placeOf))];
  };
  /** Tells whether the run was one. Where it was not, no part of it is: that is shorter and comes back less. */
  const close = (): boolean => {
    const circling = run.length >= notes && comesBack(run) >= returns;
    if (circling) found.push(run);
    return circling;
  };
  for (const tone of texture.tones[voice]) {
    const place = placeOf(tone);
    const last = run.at(-1);
    if (last !== undefined && (nextTone(texture, last) !== tone || breaks.has(tone.at))) {
      close();
      startAnew([]);
    }
    if (place - lowest > THIRD || highest - place > THIRD) {
      const outside = run.findLastIndex((other) => Math.abs(placeOf(other) - place) > THIRD);
      startAnew(close() ? [] : run.slice(outside + 1));
    }
    run.push(tone);
    [lowest, highest] = [Math.min(lowest, place), Math.max(highest, place)];
  }
  close();
  return found;
}

/** In staff places. */
const THIRD = 2;

function placeOf({ pitch }: Tone): number {
  return staffPlace(pitch);
}

/** How many times the line comes to the pitch it comes to most, repeated notes counted once. */
function comesBack(run: readonly Tone[]): number {
  const arrivals = new Map<string, number>();
  for (const [i, { pitch }] of run.entries()) {
    if (i > 0 && samePitch(run[i - 1]!.pitch, pitch)) continue;
    arrivals.set(printPitch(pitch), (arrivals.get(printPitch(pitch)) ?? 0) + 1);
  }
  return Math.max(...arrivals.values());
}
