import { barAt, placeAt, printPlace } from '../score/place.ts';
import { VOICE_WORDS, VOICES, type VoiceEvent, type VoiceName } from '../score/score.ts';
import type { Slice, Texture } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { beats, sentence } from './wording.ts';

export const unfinished = defineRule({
  id: 'unfinished',
  name: 'Still to be written',
  family: 'rhythm and notation',
  statement: 'By the end of the exercise every voice sings on every beat.',
  why: 'Four-part writing is judged with all four voices there: until this stretch is written, chords and part-writing cannot be checked here.',
  hints: [
    'Look at the stretch named: the other voices sing, and this one is empty or rests.',
    'Decide on the chord first, from the melody and the bass, then find the nearest note of it for this voice.',
    'Chorale texture: all four voices sing throughout, and breathe together.',
  ],
  source: 'common practice, no source',
  severity: 'query',
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Two beats of the alto are still to be written, and the tenor rests while the others sing.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4 A4 | B4*4! |
A: G4 F#4 ? ? | G4*4! |
T: D4 D4 r C4 | D4*4! |
B: G3 D3 E3 F#3 | G3*4! |`,
      },
    ],
    right: [
      {
        caption: 'Every voice sings on every beat.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4 A4 | B4*4! |
A: G4 F#4 E4 F#4 | G4*4! |
T: D4 D4 B3 D4 | D4*4! |
B: G3 D3 E3 D3 | G2*4! |`,
      },
    ],
  },
  check: ({ texture }) =>
    VOICES.flatMap((voice) => stretches(texture, voice)).sort(
      (a, b) => a.from - b.from || VOICES.indexOf(a.voices[0]!) - VOICES.indexOf(b.voices[0]!),
    ),
});

interface Stretch {
  readonly kind: 'gap' | 'rest';
  readonly from: Ticks;
  until: Ticks;
}

/** The stretches where one voice is not written, or rests while another voice sings: one for each, however long. */
function stretches(texture: Texture, voice: VoiceName): Occurrence[] {
  const found: Stretch[] = [];
  for (const slice of texture.slices) {
    const kind = slice.parts[voice].kind;
    const silent = kind === 'gap' || (kind === 'rest' && othersSing(slice, voice));
    const open = found.at(-1);
    if (!silent) continue;
    if (open !== undefined && open.kind === kind && open.until === slice.at) open.until = slice.until;
    else found.push({ kind, from: slice.at, until: slice.until });
  }
  return found.map((stretch) => occurrence(texture, voice, stretch));
}

function othersSing(slice: Slice, voice: VoiceName): boolean {
  return VOICES.some((other) => other !== voice && slice.parts[other].kind === 'tone');
}

function occurrence(texture: Texture, voice: VoiceName, { kind, from, until }: Stretch): Occurrence {
  const { score } = texture;
  const length = beats(until - from, barAt(score, from).metre);
  const where = printPlace(placeAt(score, from));
  const whole = !score.voices[voice].some((event: VoiceEvent) => event.kind === 'note');
  const message =
    kind === 'rest'
      ? `The ${VOICE_WORDS[voice]} rests for ${length} from ${where} while other voices sing.`
      : whole
        ? `The ${VOICE_WORDS[voice]} is still to be written.`
        : `The ${VOICE_WORDS[voice]} is still to be written for ${length} from ${where}.`;
  const breath = until - from < beatLength(barAt(score, from).metre);
  return {
    // A half-finished exercise is normal; a rest where the others sing was meant, and rarely fits the style.
    severity: kind === 'gap' || breath ? 'remark' : 'query',
    voices: [voice],
    from,
    until,
    tones: [],
    message: sentence(message),
  };
}
