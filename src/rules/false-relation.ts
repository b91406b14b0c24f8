import type { Analysis } from '../harmony/analysis.ts';
import { tonesIn } from '../harmony/by-ear/hearing.ts';
import { neapolitanAt } from '../harmony/by-ear/neapolitan.ts';
import { plainlyMisspelt } from '../harmony/by-ear/plainly-misspelt.ts';
import { intervalBetween } from '../score/interval.ts';
import { isInner, nextTone, phraseBreaks } from '../score/motion.ts';
import { fifthsPlace, type Step, sameNoteName } from '../score/pitch.ts';
import { asWritten, type Slice, type Texture, type Tone, writtenPitch } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { about, besides } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const falseRelation = defineRule({
  id: 'false-relation',
  name: 'False relation',
  family: 'melody',
  statement: 'A chromatic change of a note stays in one voice; it is not split between two.',
  why: 'When one voice has a note natural and another has it sharp straight after, the ear still holds the first, and the second sounds like a mistake.',
  hints: [
    'Look at the two notes of the same letter with different accidentals: they follow each other in different voices.',
    'Let the voice that has the first of them move by semitone to the second.',
    'Part-writing: avoid false relations, above all between the outer voices.',
  ],
  source:
    'W. Piston, Harmony, on cross relation (from memory); the chorales allow it where the first of the two voices moves on by step; R. Hutchinson, Music Theory for the 21st-Century Classroom, 2017, chapter 20 on the Neapolitan, whose lowered second degree may be left so (open to all)',
  severity: 'query',
  weight: 4,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'C in the soprano is followed by C sharp in the bass.',
        text: `key: C major
metre: 3/4
S: C5 A4 A4 | B4 C5*2 |
A: E4 E4 F4 | D4 E4*2 |
T: G3 G3 F3 | G3 G3*2 |
B: E3 C#3 D3 | G2 C3*2 |`,
      },
    ],
    right: [
      {
        caption: 'The voice that has C goes to C sharp itself.',
        text: `key: C major
metre: 3/4
S: G4 G4 F4 |
A: E4 E4 D4 |
T: C4 C#4 D4 |
B: C3 A2 D3 |`,
      },
    ],
  },
  check: (analysis) => {
    const { texture } = analysis;
    const breaks = phraseBreaks(texture);
    const heard: Heard = new Map();
    const followed = texture.transitions
      .flatMap(({ from, to }) => {
        for (const { pitch } of writtenIn(analysis, from)) {
          const letter = heard.get(pitch.step) ?? new Map<number, Slice>();
          heard.set(pitch.step, letter.set(pitch.alteration, from));
        }
        if (breaks.has(from.until)) heard.clear();
        return writtenIn(analysis, to).flatMap((tone) =>
          tone.at === to.at ? relationsTo(analysis, to, tone, heard) : [],
        );
      })
      .filter(({ from, tones }) => !leavesNeapolitan(analysis, from, tones));
    return besides(
      followed,
      texture.slices.flatMap((slice) => atOnce(analysis, slice)),
    );
  },
});

/** From the lowered second degree in a Neapolitan to the plain one in the dominant: handbooks allow it. */
function leavesNeapolitan(analysis: Analysis, from: Ticks, tones: readonly Tone[]): boolean {
  const key = neapolitanAt(analysis, from);
  return (
    key !== undefined &&
    tones.some(({ at, pitch }) => at <= from && fifthsPlace(pitch) === fifthsPlace(key.tonic) - 5)
  );
}

/** As they stand on the page: each singer reads the letters, a wrong one too, unless nobody could mean it. */
function writtenIn(analysis: Analysis, slice: Slice): Tone[] {
  const meant = plainlyMisspelt(analysis);
  return tonesIn(slice).map((tone) => (meant.has(tone) ? tone : asWritten(tone)));
}

/** Two voices that have one letter with different accidentals at the same time. */
function atOnce(analysis: Analysis, slice: Slice): Occurrence[] {
  const tones = writtenIn(analysis, slice);
  return tones.flatMap((upper, i) =>
    tones.slice(i + 1).flatMap((lower): Occurrence[] => {
      const from = Math.max(upper.at, lower.at);
      const until = Math.min(upper.until, lower.until);
      if (from !== slice.at || !clash(upper, lower)) return [];
      return [
        about([upper, lower], {
          // In 196 chorales by Bach it comes thrice, for half a beat.
          ...(until - from < beatLength(slice.bar.metre) ? { severity: 'remark' as const } : {}),
          from,
          until,
          message: `${inVoice(upper)} and ${inVoice(lower)} sound together.`,
        }),
      ];
    }),
  );
}

/** In which slice of the phrase each alteration of each letter sounded last. */
type Heard = Map<Step, Map<number, Slice>>;

/** What a tone that begins in this slice clashes with: the latest such note of another voice, within one beat. */
function relationsTo(analysis: Analysis, slice: Slice, tone: Tone, heard: Heard): Occurrence[] {
  let before: Slice | undefined;
  for (const [alteration, last] of heard.get(tone.pitch.step) ?? [])
    if (alteration !== tone.pitch.alteration && last.index > (before?.index ?? -1)) before = last;
  if (before === undefined || before.until <= slice.at - beatLength(slice.bar.metre)) return [];
  const clashing = writtenIn(analysis, before).filter((other) => clash(other, tone));
  // Some voice makes the semitone itself: the ear has a line to follow.
  if (clashing.some((other) => other.voice === tone.voice || inflects(analysis.texture, other, tone)))
    return [];
  return weigh(analysis.texture, clashing[0]!, tone);
}

function clash(a: Tone, b: Tone): boolean {
  return a.pitch.step === b.pitch.step && a.pitch.alteration !== b.pitch.alteration;
}

function inflects(texture: Texture, other: Tone, tone: Tone): boolean {
  const next = nextTone(texture, other);
  return next !== undefined && next.at <= tone.at && sameNoteName(writtenPitch(next), tone.pitch);
}

function weigh(texture: Texture, other: Tone, tone: Tone): Occurrence[] {
  const outer = !isInner(tone.voice) && !isInner(other.voice);
  const adjacent = other.until >= tone.at;
  const smooth = leavesByStep(texture, other);
  // Where the voice that had the first note goes on by step, the ear is led past it.
  if (!adjacent && smooth && !outer) return [];
  return [
    about([tone, other], {
      ...(adjacent && (outer || !smooth) ? {} : { severity: 'remark' as const }),
      from: other.at,
      until: tone.until,
      message: `${inVoice(other)} is followed by ${inVoice(tone)}.`,
    }),
  ];
}

function leavesByStep(texture: Texture, tone: Tone): boolean {
  const next = nextTone(texture, tone);
  return next !== undefined && Math.abs(intervalBetween(tone.pitch, writtenPitch(next)).steps) === 1;
}
