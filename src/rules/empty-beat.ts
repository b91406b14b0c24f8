import { placeAt, printPlace } from '../score/place.ts';
import { VOICES } from '../score/score.ts';
import type { Slice, Texture } from '../score/texture.ts';
import { beatLength } from '../score/time.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { beats } from './wording.ts';

export const emptyBeat = defineRule({
  id: 'empty-beat',
  name: 'Empty beat',
  family: 'rhythm and notation',
  statement: 'No beat between the first chord and the last is silent in all the voices.',
  why: 'A hymn breathes at the fermatas, by holding the chord; a beat in which nobody sings sounds like a hole in the verse.',
  hints: [
    'Look at the beat named: all the voices rest there.',
    'Let the chord before it last through the silence, or begin the next phrase there.',
    'Chorale texture: phrases are divided by held chords, not by rests.',
  ],
  source:
    'M. Boyd, Harmonizing “Bach” Chorales (from memory), for the unbroken four-part texture of the style; no handbook makes a rule of it',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'All four voices rest on the third beat.',
        text: `key: C major
metre: 4/4
S: E4 F4 r D4 | E4*4! |
A: C4 C4 r B3 | C4*4! |
T: G3 A3 r G3 | G3*4! |
B: C3 F3 r G3 | C3*4! |`,
      },
    ],
    right: [
      {
        caption: 'The chord is held through to the next one.',
        text: `key: C major
metre: 4/4
S: E4 F4*2 D4 | E4*4! |
A: C4 C4*2 B3 | C4*4! |
T: G3 A3*2 G3 | G3*4! |
B: C3 F3*2 G3 | C3*4! |`,
      },
    ],
  },
  check: ({ texture }) => silences(texture),
});

/** Silent in every voice, and on purpose: what is not written yet is another rule's business. */
function isSilent(slice: Slice): boolean {
  return VOICES.every((voice) => slice.parts[voice].kind === 'rest');
}

function silences(texture: Texture): Occurrence[] {
  const { slices, score } = texture;
  const sounding = slices.filter((slice) => VOICES.some((voice) => slice.parts[voice].kind === 'tone'));
  const first = sounding[0]?.at ?? 0;
  const last = sounding.at(-1)?.at ?? 0;
  const found: { from: number; until: number; slice: Slice }[] = [];
  for (const [i, slice] of slices.entries()) {
    if (slice.at < first || slice.at > last || !isSilent(slice)) continue;
    const open = found.at(-1);
    if (open?.until === slice.at) open.until = slice.until;
    // After a fermata the choir breathes: some editions write that breath as a rest.
    else if (!slices[i - 1]?.fermata && !slices[i - 1]?.rests)
      found.push({ from: slice.at, until: slice.until, slice });
  }
  return found
    .filter(({ from, until, slice }) => until - from >= beatLength(slice.bar.metre))
    .map(({ from, until, slice }) => ({
      voices: [...VOICES],
      from,
      until,
      tones: [],
      message: `Nobody sings for ${beats(until - from, slice.bar.metre)} from ${printPlace(placeAt(score, from))}.`,
    }));
}
