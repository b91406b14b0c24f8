import { listed } from '../english/words.ts';
import { nextTone } from '../score/motion.ts';
import { comparePitch, type Pitch, parsePitch, printPitch, semitone } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES, type VoiceName } from '../score/score.ts';
import { type Texture, type Tone, writtenPitch } from '../score/texture.ts';
import { defineRule, type Occurrence, range, type Severity, text } from './rule.ts';

const RANGES_FORM = {
  pattern:
    '^\\s*[SATB]\\s+[A-G][#b]{0,2}\\d\\s*[–-]\\s*[A-G][#b]{0,2}\\d(\\s*,\\s*[SATB]\\s+[A-G][#b]{0,2}\\d\\s*[–-]\\s*[A-G][#b]{0,2}\\d)*\\s*$',
  example: 'S C4–G5, A G3–D5, T C3–G4, B E2–D4',
} as const;

export const voiceRange = defineRule({
  id: 'voice-range',
  name: 'Range of the voice',
  family: 'spacing and range',
  statement: 'Each voice stays in the range that a choir singer reaches with ease.',
  why: 'Notes at the edge of a voice sound strained or cannot be heard, and a note beyond it cannot be sung at all.',
  hints: [
    'Look at how far this note lies outside the range of its voice.',
    'Move the voice to another note of the chord, or move all the parts below the melody up or down together.',
    'Part-writing: keep every voice within its range, with the middle of it for most of the time.',
  ],
  source:
    'E. Aldwell and C. Schachter, Harmony and Voice Leading: soprano C4–G5, alto G3–C5, tenor C3–G4, bass E2–C4; S. Kostka and D. Payne, Tonal Harmony, give alto and bass a tone more (both from memory). The absolute ranges are what the chorales themselves reach',
  severity: 'fault',
  weight: 6,
  parameters: {
    comfortable: text(
      'S C4–G5, A G3–D5, T C3–G4, B E2–D4',
      RANGES_FORM,
      'The range in which each voice sings with ease; a note outside it is a remark, or further out a query.',
    ),
    absolute: text(
      'S A3–A5, A F3–E5, T B2–A4, B C2–E4',
      RANGES_FORM,
      'The lowest and highest notes each voice has at all; a note beyond them is a fault.',
    ),
    stretch: range(4, [0, 12], 'How many semitones outside the comfortable range are only worth a remark.'),
  },
  examples: {
    wrong: [
      {
        caption: 'A tenor part that goes up to B4 is out of most tenors’ reach.',
        text: `key: G major
metre: 2/4
S: D5 D5 |
A: B4 B4 |
T: G4 B4 |
B: G3 G3 |`,
      },
    ],
    right: [
      {
        caption: 'All four voices in the middle of their range.',
        text: `key: G major
metre: 3/4
S: B4 A4 G4 |
A: D4 F#4 G4 |
T: G3 A3 B3 |
B: G3 D3 G2 |`,
      },
    ],
  },
  check: ({ texture }, { comfortable, absolute, stretch }) => {
    const ease = rangesIn(comfortable);
    const reach = rangesIn(absolute);
    return VOICES.flatMap((voice) => outside(texture, voice, ease[voice], reach[voice], stretch)).sort(
      (a, b) => a.from - b.from,
    );
  },
});

type Range = readonly [Pitch, Pitch];

/** Reads `S C4–G5, A G3–D5, …`; a voice that is not named, or whose notes are not read, has no bounds. */
export function rangesIn(text: string): Partial<Record<VoiceName, Range>> {
  const ranges: Partial<Record<VoiceName, Range>> = {};
  for (const [, name, low, high] of text.matchAll(
    /([SATB])\s+([A-G][#b]{0,2}\d)\s*[–-]\s*([A-G][#b]{0,2}\d)/g,
  )) {
    const voice = VOICES.find((v) => v === name);
    const from = parsePitch(low ?? '');
    const to = parsePitch(high ?? '');
    if (voice && from && to) ranges[voice] = [from, to];
  }
  return ranges;
}

/** Neighbouring notes on the same side of the range make one occurrence, as heavy as the furthest of them. */
function outside(
  texture: Texture,
  voice: VoiceName,
  ease: Range | undefined,
  reach: Range | undefined,
  stretch: number,
): Occurrence[] {
  if (ease === undefined) return [];
  const occurrences: Occurrence[] = [];
  let run: Tone[] = [];
  for (const tone of texture.tones[voice]) {
    const side = sideOf(tone.pitch, ease);
    if (side !== undefined) run.push(tone);
    const next = nextTone(texture, tone);
    const goesOn = side !== undefined && next !== undefined && sideOf(next.pitch, ease) === side;
    if (goesOn || side === undefined || run.length === 0) continue;
    occurrences.push(occurrenceOf(run, side, ease, reach, stretch));
    run = [];
  }
  return occurrences;
}

function sideOf(pitch: Pitch, [low, high]: Range): 'below' | 'above' | undefined {
  if (semitone(pitch) < semitone(low)) return 'below';
  return semitone(pitch) > semitone(high) ? 'above' : undefined;
}

function occurrenceOf(
  run: readonly Tone[],
  side: 'below' | 'above',
  ease: Range,
  reach: Range | undefined,
  stretch: number,
): Occurrence {
  const pitches = run.map((tone) => tone.pitch).sort(comparePitch);
  const furthest = side === 'below' ? pitches[0]! : pitches.at(-1)!;
  const edge = side === 'below' ? ease[0] : ease[1];
  const beyond = reach !== undefined && sideOf(furthest, reach) !== undefined;
  const excess = Math.abs(semitone(furthest) - semitone(edge));
  const severity: Severity = beyond ? 'fault' : excess > stretch ? 'query' : 'remark';
  const voice = run[0]!.voice;
  const different = [...new Set(run.map((tone) => printPitch(writtenPitch(tone))))];
  const names = listed(different);
  const word = side === 'below' ? 'low' : 'high';
  return {
    severity,
    voices: [voice],
    from: run[0]!.at,
    until: run.at(-1)!.until,
    tones: run,
    message: beyond
      ? `${names} ${different.length > 1 ? 'are' : 'is'} too ${word} for the ${VOICE_WORDS[voice]}, which sings from ${printPitch(ease[0])} to ${printPitch(ease[1])}.`
      : `${names} ${different.length > 1 ? 'are' : 'is'} ${word} for the ${VOICE_WORDS[voice]}, which sings with ease from ${printPitch(ease[0])} to ${printPitch(ease[1])}.`,
  };
}
