import { listed } from '../english/words.ts';
import type { Analysis } from '../harmony/analysis.ts';
import { hearingAt } from '../harmony/by-ear/hearing.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { isFleeting, isStep } from '../harmony/questions/ornamental.ts';
import {
  isBrokenInBass,
  lacksThird,
  lastTone,
  type Voicing,
  voicings,
} from '../harmony/questions/voicing.ts';
import { intervalUp, isPerfectFifth } from '../score/interval.ts';
import { nextTone } from '../score/motion.ts';
import { fifthsPlace, type NoteName, printNoteName, sameNoteName } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { type Slice, type Tone, toneIn } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { about, openingTones } from './occurrence.ts';
import { defineRule, type Occurrence, type Severity } from './rule.ts';
import { inVoice } from './wording.ts';

export const missingThird = defineRule({
  id: 'missing-third',
  name: 'Third missing',
  family: 'chords',
  statement: 'Every chord has its third.',
  why: 'The third makes a chord major or minor; without it the chord sounds bare and hollow, like music of another age.',
  hints: [
    'Name the notes of this chord and see which member nobody sings.',
    'Give the third to a voice that doubles the root or the fifth, where it can reach it by a small movement.',
    'Doubling and omission: the fifth may be left out, the third may not.',
  ],
  source: 'W. Piston, Harmony, chapter on triads in four parts (from memory)',
  severity: 'fault',
  weight: 7,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The second chord has only D and A.',
        text: `key: G major
metre: 4/4
S: B4 A4 B4 A4 | G4*4! |
A: D4 D4 D4 F#4 | D4*4! |
T: G3 A3 G3 C4 | B3*4! |
B: G3 D3 G3 D3 | G2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The alto has the third of the second chord.',
        text: `key: G major
metre: 4/4
S: B4 A4 B4 A4 | G4*4! |
A: D4 F#4 G4 F#4 | D4*4! |
T: G3 A3 G3 C4 | B3*4! |
B: G3 D3 G3 D3 | G2*4! |`,
      },
    ],
  },
  check: (analysis) => {
    const found = voicings(analysis).flatMap((voicing) => lacking(analysis, voicing));
    const known = (from: Ticks, until: Ticks) => found.some((o) => o.from < until && o.until > from);
    const more = bareFifths(analysis).filter(({ from, until }) => !known(from, until));
    return [...found, ...more].sort((a, b) => a.from - b.from);
  },
});

function lacking(analysis: Analysis, voicing: Voicing): Occurrence[] {
  const { chord } = voicing;
  if (!voicing.complete || !lacksThird(voicing)) return [];
  if (thirdComes(analysis, voicing) || isFleeting(analysis, chord) || isBrokenInBass(analysis, voicing))
    return [];
  const tones = openingTones(voicing);
  const bare = tones.every((tone) => memberOf(chord, tone.pitch) !== undefined);
  return [
    about(tones, {
      severity: bare && chord.members.seventh === undefined ? 'fault' : lessBare(analysis, voicing, bare),
      from: chord.at,
      until: chord.until,
      message: `The chord on ${printNoteName(chord.root)} has no third: ${listed(tones.map(inVoice))}.`,
    }),
  ];
}

/** With a seventh or a foreign note the chord is less bare; where that makes another chord to the ear, none may be missing. */
function lessBare(analysis: Analysis, { chord }: Voicing, bare: boolean): Severity {
  return !bare && hearingAt(analysis.texture, chord.at) !== undefined ? 'remark' : 'query';
}

/** A voice lies a step away from the third and goes to it when the chord is over: the third is only held back. */
function thirdComes(analysis: Analysis, voicing: Voicing): boolean {
  const { third } = voicing.chord.members;
  return VOICES.some((voice) => {
    const tone = lastTone(voicing, voice);
    const next = tone && nextTone(analysis.texture, tone);
    return tone !== undefined && next !== undefined && isStep(tone, next) && sameNoteName(next.pitch, third);
  });
}

/** Beats from beginning to end of which the four voices sing nothing but a fifth or a tritone, whatever chord they are taken for. */
function bareFifths(analysis: Analysis): Occurrence[] {
  const { slices } = analysis.texture;
  return slices.flatMap((slice, i): Occurrence[] => {
    const fifth = bareFifthIn(slice);
    if (fifth === undefined || slice.strength < 2) return [];
    const beat = slice.at + beatLength(slice.bar.metre);
    let last = slice;
    for (let j = i + 1; j < slices.length && last.until < beat; j++) {
      const next = bareFifthIn(slices[j]!);
      if (next === undefined || !sameNoteName(next.root, fifth.root)) return [];
      last = slices[j]!;
    }
    return [
      about(fifth.tones, {
        severity: fifth.inverted ? 'remark' : 'query',
        from: slice.at,
        until: last.until,
        message: `The chord on ${printNoteName(fifth.root)} has no third: ${listed(fifth.tones.map(inVoice))}.`,
      }),
    ];
  });
}

function bareFifthIn(slice: Slice): { root: NoteName; tones: Tone[]; inverted: boolean } | undefined {
  const tones = VOICES.flatMap((voice) => toneIn(slice, voice) ?? []);
  const bass = tones.at(-1)?.pitch;
  if (tones.length < VOICES.length || bass === undefined) return undefined;
  const others = tones.filter((tone) => !sameNoteName(tone.pitch, bass));
  const [other] = others;
  if (other === undefined) return undefined;
  if (others.every((tone) => isPerfectFifth(intervalUp(bass, tone.pitch))))
    return { root: bass, tones, inverted: false };
  // The tritone of a diminished triad, either way up.
  const tritone = (a: NoteName, b: NoteName) => fifthsPlace(b) === fifthsPlace(a) - 6;
  if (others.every((tone) => tritone(bass, tone.pitch))) return { root: bass, tones, inverted: true };
  if (others.every((tone) => tritone(tone.pitch, bass))) return { root: other.pitch, tones, inverted: true };
  // Over its fifth: the ear may still hope for a suspension.
  const over = others.every((tone) => isPerfectFifth(intervalUp(tone.pitch, bass)));
  return over ? { root: other.pitch, tones, inverted: true } : undefined;
}
