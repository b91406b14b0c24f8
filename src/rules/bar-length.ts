import { capitalised } from '../english/words.ts';
import { type Bar, type Misfit, VOICES, type VoiceName } from '../score/score.ts';
import { stretchesWithin } from '../score/search.ts';
import type { Texture, Tone } from '../score/texture.ts';
import { printMetre } from '../score/time.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { beats, inOrder, voiceList } from './wording.ts';

export const barLength = defineRule({
  id: 'bar-length',
  name: 'Bar does not add up',
  family: 'rhythm and notation',
  statement: 'In every bar each voice has as many beats as the metre asks for.',
  why: 'A bar that is too long or too short pushes everything after it off the beat: the voices no longer meet where you meant them to, and nobody can sing it from the page.',
  hints: [
    'Count the beats of this bar in the voice named, one note at a time, and compare with a voice that fits.',
    'Lengthen or shorten a note, or add what was left out, until the bar is exactly full.',
    'Notation: the note values between two barlines add up to the metre.',
  ],
  source: 'E. Gould, Behind Bars, 2011, chapters on rhythm and metre (from memory)',
  severity: 'fault',
  weight: 10,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The tenor has five beats in a bar of four.',
        text: `key: G major
metre: 4/4
S: G4 A4 B4 A4 | G4*4 |
A: D4 F#4 G4 F#4 | D4*4 |
T: B3 D4 D4*2 C4 | B3*4 |
B: G3 D3 G2 D3 | G2*4 |`,
      },
    ],
    right: [
      {
        caption: 'The minim is a crotchet now, and the bar is full.',
        text: `key: G major
metre: 4/4
S: G4 A4 B4 A4 | G4*4 |
A: D4 F#4 G4 F#4 | D4*4 |
T: B3 D4 D4 C4 | B3*4 |
B: G3 D3 G2 D3 | G2*4 |`,
      },
    ],
  },
  check: ({ texture }) => texture.score.bars.flatMap((bar) => misfitsOf(texture, bar)),
});

/** One occurrence for each wrong length in a bar, with all the voices that have it. */
function misfitsOf(texture: Texture, bar: Bar): Occurrence[] {
  const byLength = new Map<number, Misfit[]>();
  for (const misfit of bar.misfits) {
    byLength.set(misfit.written, [...(byLength.get(misfit.written) ?? []), misfit]);
  }
  return [...byLength].map(([written, misfits]) => {
    const voices = VOICES.filter((voice) => misfits.some((misfit) => misfit.voice === voice));
    const expected = misfits[0]!.expected;
    const verb = voices.length === 1 ? 'has' : 'have';
    const held = beats(written, bar.metre);
    const wanted = beats(expected, bar.metre);
    return {
      voices,
      from: bar.at,
      until: bar.at + bar.duration,
      tones: inOrder(voices.flatMap((voice) => tonesIn(texture, voice, bar))),
      ...(mayBeUpbeat(texture, bar, misfits) ? { hint: UPBEAT } : {}),
      message: capitalised(
        `${voiceList(voices)} ${verb} ${held} in bar ${bar.number}, where ${wanted} of ${printMetre(bar.metre)} should stand.`,
      ),
    };
  });
}

const UPBEAT =
  'If this bar is an upbeat, mark it as one: in text by a line “upbeat:” with its beats above it, in a notation program as a pickup bar. Else count its beats, one note at a time.';

/** All voices are short alike where the piece begins. */
function mayBeUpbeat({ score }: Texture, bar: Bar, misfits: readonly Misfit[]): boolean {
  const short = misfits.every(({ written, expected }) => written < expected);
  return bar === score.bars[0] && short && misfits.length === VOICES.length;
}

function tonesIn(texture: Texture, voice: VoiceName, bar: Bar): readonly Tone[] {
  return stretchesWithin(texture.tones[voice], bar.at, bar.at + bar.duration);
}
