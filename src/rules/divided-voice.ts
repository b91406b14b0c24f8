import { capitalised, listed } from '../english/words.ts';
import { printPitch } from '../score/pitch.ts';
import { type Note, VOICE_WORDS, VOICES } from '../score/score.ts';
import type { Texture, Tone } from '../score/texture.ts';
import { defineRule, type Occurrence } from './rule.ts';

export const dividedVoice = defineRule({
  id: 'divided-voice',
  name: 'Two notes in one voice',
  family: 'rhythm and notation',
  statement: 'Each of the four voices has one note at a time.',
  why: 'Four singers sing one note each. A second note in a voice is a fifth part that nobody sings, and mostly a slip of the mouse: the next note was put on top of this one, or a note of another voice was written into this one.',
  hints: [
    'Look at the place named: one stem there carries two heads, or a note begins before the one before it has ended.',
    'Decide which of the two this voice sings, and take the other out or move it to the voice it was meant for.',
    'Four-part writing: a single voice does not divide.',
  ],
  source:
    'M. Boyd, Harmonizing “Bach” Chorales (from memory), for the unbroken four-part texture of the style. That it is asked about and no fault is ours: a choir’s basses may divide on purpose, above all in a last chord',
  severity: 'query',
  weight: 9,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto has two notes on the third beat.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4 F#4 | G4*4! |
A: D4 D4 D4 D4 | D4*4! |
T: G3 F#3 B3 C4 | B3*4! |
B: G3 D3 G3 D3 | G2*4! |`,
        beside: [{ voice: 'A', note: 2, pitch: { step: 'B', alteration: 0, octave: 3 } }],
      },
    ],
    right: [
      {
        caption: 'The alto has one of them.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4 F#4 | G4*4! |
A: D4 D4 D4 D4 | D4*4! |
T: G3 F#3 B3 C4 | B3*4! |
B: G3 D3 G3 D3 | G2*4! |`,
      },
    ],
  },
  check: ({ texture }) => divided(texture).sort((a, b) => a.from - b.from),
});

function divided({ tones }: Texture): Occurrence[] {
  return VOICES.flatMap((voice) =>
    tones[voice].flatMap((tone) => tone.notes.flatMap((note) => dividedAt(tone, note))),
  );
}

function dividedAt(tone: Tone, { at, duration, pitch, beside }: Note): Occurrence[] {
  if (beside === undefined || beside.length === 0) return [];
  const taken = printPitch(pitch);
  const others = listed(beside.map((spare) => printPitch(spare.pitch)));
  return [
    {
      voices: [tone.voice],
      from: at + Math.min(...beside.map(({ into }) => into)),
      until: at + duration,
      tones: [tone],
      message: capitalised(
        `${VOICE_WORDS[tone.voice]} has ${beside.length === 1 ? 'two notes' : 'several notes'} at once: ${taken}, and ${others} beside it. Everything else here is judged as if ${taken} were the only one.`,
      ),
    },
  ];
}
