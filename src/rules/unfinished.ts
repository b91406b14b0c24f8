import { capitalised } from '../english/words.ts';
import { barAt, placeAt, printPlace } from '../score/place.ts';
import { type Score, VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import type { Slice, Texture } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { beats, voiceList } from './wording.ts';

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
  source:
    'M. Boyd, Harmonizing “Bach” Chorales (from memory), for the unbroken four-part texture of the style: what is missing from it is only told',
  severity: 'query',
  weight: 1,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'Two beats of the alto are still to be written, and the tenor rests while the others sing.',
        text: `key: G major
metre: 4/4
S: B4 A4 G4 A4 | G4*4! |
A: G4 F#4 ? ? | G4*4! |
T: D4 D4 r C4 | B3*4! |
B: G3 D3 E3 D3 | G2*4! |`,
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
  check: ({ texture, phrases }) => {
    const starts = new Set(phrases.map((phrase) => phrase.from));
    return together(VOICES.flatMap((voice) => stretches(texture, voice)))
      .sort((a, b) => a.from - b.from || VOICES.indexOf(a.voices[0]!) - VOICES.indexOf(b.voices[0]!))
      .map((stretch) => occurrence(texture, stretch, starts));
  },
});

interface Stretch {
  readonly kind: 'gap' | 'rest';
  readonly voices: readonly VoiceName[];
  readonly from: Ticks;
  readonly until: Ticks;
}

/** The stretches where one voice is not written, or rests while another voice sings, however long each is. */
function stretches(texture: Texture, voice: VoiceName): Stretch[] {
  const found: Stretch[] = [];
  for (const slice of texture.slices) {
    const { kind } = slice.parts[voice];
    const silent = kind === 'gap' || (kind === 'rest' && othersSing(slice, voice));
    if (kind === 'tone' || !silent) continue;
    const open = found.at(-1);
    if (open?.kind === kind && open.until === slice.at) {
      found[found.length - 1] = { ...open, until: slice.until };
    } else found.push({ kind, voices: [voice], from: slice.at, until: slice.until });
  }
  return found;
}

function othersSing(slice: Slice, voice: VoiceName): boolean {
  return VOICES.some((other) => other !== voice && slice.parts[other].kind === 'tone');
}

/** Voices that rest together are told of together; each unwritten stretch is told by itself, so that it can be ticked off. */
function together(found: readonly Stretch[]): Stretch[] {
  const merged: Stretch[] = [];
  const rests = new Map<string, number>();
  for (const stretch of found) {
    const place = `${stretch.from}-${stretch.until}`;
    const same = stretch.kind === 'rest' ? rests.get(place) : undefined;
    if (same !== undefined)
      merged[same] = { ...stretch, voices: [...merged[same]!.voices, ...stretch.voices] };
    else {
      if (stretch.kind === 'rest') rests.set(place, merged.length);
      merged.push(stretch);
    }
  }
  return merged;
}

function occurrence(
  { score }: Texture,
  { kind, voices, from, until }: Stretch,
  starts: ReadonlySet<Ticks>,
): Occurrence {
  const bar = barAt(score, from);
  const short = until - from < beatLength(bar.metre);
  const verb = voices.length === 1 ? 'rests' : 'rest';
  return {
    // A half-finished exercise is normal; a rest where the others sing was meant, and fits the style only as a breath
    // or where a voice enters a phrase later than the others.
    severity: kind === 'gap' || short || starts.has(from) ? 'remark' : 'query',
    voices,
    from,
    until,
    tones: [],
    message:
      kind === 'rest'
        ? capitalised(
            `${voiceList(voices)} ${verb} for ${beats(until - from, bar.metre)} from ${printPlace(placeAt(score, from))} while other voices sing.`,
          )
        : toWrite(score, voices, from, until),
  };
}

/** `Alto and tenor are still to be written for 4 beats from bar 2, beat 1.` Without a place where they have no note at all. */
function toWrite(score: Score, voices: readonly VoiceName[], from: Ticks, until: Ticks): string {
  const begun = voices.some((voice) => score.voices[voice].some((event) => event.kind === 'note'));
  const where = begun
    ? ` for ${beats(until - from, barAt(score, from).metre)} from ${printPlace(placeAt(score, from))}`
    : '';
  const [one] = voices;
  const who = voices.length === 1 ? `The ${VOICE_WORDS[one!]} is` : `${capitalised(voiceList(voices))} are`;
  return `${who} still to be written${where}.`;
}

/** What is still to be written as sentences: voices that lack the same stretch are told of together, from above down. */
export function toWriteInWords(
  score: Score,
  findings: readonly Pick<Occurrence, 'voices' | 'from' | 'until' | 'message'>[],
): string[] {
  const alike = new Map<string, typeof findings>();
  for (const finding of findings) {
    const { voices, from, until, message } = finding;
    const alone = toWrite(score, voices, from, until);
    const key = message === alone ? message.slice(message.indexOf(' still ')) : message;
    alike.set(key, [...(alike.get(key) ?? []), finding]);
  }
  return [...alike.values()].map((group) => {
    const [{ from, until, message }] = group as [(typeof findings)[number]];
    const voices = VOICES.filter((voice) => group.some((finding) => finding.voices.includes(voice)));
    return group.length === 1 ? message : toWrite(score, voices, from, until);
  });
}
