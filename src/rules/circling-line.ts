import { nextTone, phraseBreaks } from '../score/motion.ts';
import { comparePitch, printPitch, samePitch, staffPlace } from '../score/pitch.ts';
import { VOICE_WORDS } from '../score/score.ts';
import type { Texture, Tone } from '../score/texture.ts';
import { defineRule } from './rule.ts';

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
  source: 'common practice, no source',
  severity: 'remark',
  parameters: {
    notes: {
      value: 8,
      statement: 'How many notes in a row within the compass of a third are called circling.',
      range: [5, 32],
    },
    returns: {
      value: 4,
      statement: 'How many times at least the line has come to one of its notes.',
      range: [2, 16],
    },
  },
  examples: {
    wrong: [
      {
        caption: 'The bass turns round C for two bars.',
        text: `key: C major
metre: 4/4
S: E4 G4 E4 F4 | E4 D4 E4 G4 |
A: C4 D4 C4 D4 | C4 B3 C4 E4 |
T: G3 G3 G3 A3 | G3 G3 G3 C4 |
B: C3 B2 C3 D3 | C3 B2 C3 C3 |`,
      },
    ],
    right: [
      {
        caption: 'The bass climbs to its highest note and falls back to the close.',
        text: `key: C major
metre: 4/4
S: E4 G4 E4 F4 | E4 D4 E4 C4 |
A: C4 D4 C4 C4 | C4 B3 C4 C4 |
T: G3 B3 G3 A3 | G3 G3 G3 E3 |
B: C3 G3 E3 F3 | G3 G2 C3 C3 |`,
      },
    ],
  },
  check: ({ texture }, { notes, returns }) =>
    (['S', 'B'] as const)
      .flatMap((voice) => circles(texture, voice, notes, returns))
      .map((tones) => {
        const pitches = tones.map((tone) => tone.pitch).sort(comparePitch);
        return {
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
  const close = () => {
    if (run.length >= notes && comesBack(run) >= returns) found.push(run);
    run = [];
  };
  for (const tone of texture.tones[voice]) {
    const last = run.at(-1);
    if (last !== undefined && (nextTone(texture, last) !== tone || breaks.has(tone.at))) close();
    while (run.length > 0 && compass([...run, tone]) > 2) {
      const before = run;
      close();
      // What is left of the stretch that still lies within a third of the new note.
      run = before.length >= notes && found.at(-1) === before ? [] : before.slice(1);
    }
    run.push(tone);
  }
  close();
  return found;
}

function compass(tones: readonly Tone[]): number {
  const places = tones.map((tone) => staffPlace(tone.pitch));
  return Math.max(...places) - Math.min(...places);
}

/** How many times the line comes to the pitch it comes to most, repeated notes counted once. */
function comesBack(run: readonly Tone[]): number {
  const arrivals = run.filter((tone, i) => i === 0 || !samePitch(run[i - 1]!.pitch, tone.pitch));
  return Math.max(
    ...arrivals.map((tone) => arrivals.filter((other) => samePitch(other.pitch, tone.pitch)).length),
  );
}
