import type { Analysis, Key } from '../harmony/analysis.ts';
import { keysNear } from '../harmony/by-ear/keys-near.ts';
import { degreeOf } from '../harmony/questions/degrees.ts';
import { dullDominants } from '../harmony/questions/dull-dominants.ts';
import { isTonic } from '../harmony/questions/functions.ts';
import { homeKey } from '../harmony/questions/home-key.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { chordAt, endsPhrase } from '../harmony/questions/moments.ts';
import { isPassingBy, isQuick, isStep } from '../harmony/questions/ornamental.ts';
import { departure } from '../harmony/questions/resolution.ts';
import { voicings } from '../harmony/questions/voicing.ts';
import { printKey } from '../harmony/words/labels.ts';
import { intervalBetween } from '../score/interval.ts';
import { phraseBreaks, previousTone } from '../score/motion.ts';
import { fifthsPlace, noteNameAtFifths, printPitch, sameNoteName, semitone } from '../score/pitch.ts';
import { VOICE_WORDS, VOICES } from '../score/score.ts';
import { type Tone, writtenPitch } from '../score/texture.ts';
import type { Ticks } from '../score/time.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const minorScaleDegrees = defineRule({
  id: 'minor-scale-degrees',
  name: 'Sixth or seventh degree in minor',
  family: 'chords',
  statement:
    'In minor the sixth and seventh degrees are raised on the way up to the tonic, and left unraised on the way down.',
  why: 'The raised degrees exist to lead up to the tonic; when a raised sixth sinks again, or an unraised seventh rises to the tonic, the key loses its colour and its pull.',
  hints: [
    'Follow the line of this voice and see whether it goes up to the tonic or down from it.',
    'Raise the sixth degree only where the raised seventh follows; keep both as in the signature where the line falls.',
    'Minor keys: melodic minor, up with raised sixth and seventh, down without.',
  ],
  source: 'W. Piston, Harmony, chapter on the minor mode (from memory)',
  severity: 'query',
  weight: 3,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The raised sixth degree, F#, sinks back to E.',
        text: `key: A minor
metre: 4/4
S: C5 D5 C5 B4 | A4*4! |
A: E4 F#4 E4 E4 | E4*4! |
T: A3 A3 A3 G#3 | C4*4! |
B: A2 D3 A2 E3 | A2*4! |`,
      },
    ],
    right: [
      {
        caption: 'The raised sixth leads on through the raised seventh to the tonic.',
        text: `key: A minor
metre: 4/4
S: C5 D5 B4 C5 | B4*2 A4*2! |
A: E4 F#4 G#4 A4 | G#4*2 E4*2! |
T: A3 A3 E4 E4 | D4*2 C4*2! |
B: A2 D3 E3 A2 | E3*2 A2*2! |`,
      },
    ],
  },
  check: (analysis) =>
    VOICES.flatMap((voice) =>
      oncePerGoal(analysis.texture.tones[voice].flatMap((tone) => judge(analysis, tone))),
    ).sort((a, b) => a.from - b.from),
});

/** A note that is struck again goes to the next note once: the last of them says so. */
function oncePerGoal(inVoiceOrder: readonly Occurrence[]): Occurrence[] {
  return inVoiceOrder.filter(({ tones }, i) => tones.at(-1) !== inVoiceOrder[i + 1]?.tones.at(-1));
}

function judge(analysis: Analysis, tone: Tone): Occurrence[] {
  const chord = chordAt(analysis, tone.at);
  // A voice still to be written can make another chord of it, and with it another key.
  if (chord === undefined) return [];
  const { settled, written } = voicings(analysis)[chord.index]!;
  if (!settled) return [];
  const next = departure(analysis.texture, tone);
  if (next === undefined) return [];
  const { key } = chord;
  // An applied or special chord borrows its notes from another key.
  const plain =
    key.mode === 'minor' && chord.roman.applied === undefined && chord.roman.special === undefined;
  if (plain && isDegree(tone, key, 6, 1)) return raisedSixth(analysis, tone, next, key, true);
  if (plain && isDegree(tone, key, 7, 1)) return raisedSeventh(analysis, tone, next, key);
  if (plain && isDegree(tone, key, 7, 0)) return plainSeventh(analysis, tone, next, key);
  // The reading may take the raised sixth itself for the sign of another key; not where the sign may be still to come.
  if (written.length < VOICES.length) return [];
  const keys = [...keysNear(analysis, chord, 1), ...keysClosedIn(analysis, next.at)];
  const near = keys.find((k) => k.mode === 'minor' && isDegree(tone, k, 6, 1));
  return near === undefined ? [] : raisedSixth(analysis, tone, next, near, false);
}

/** The minor key of the piece's signature, where a phrase ends at this moment on its tonic, with or without a tierce. */
function keysClosedIn(analysis: Analysis, at: Ticks): readonly Key[] {
  const goal = chordAt(analysis, at);
  if (goal === undefined || !endsPhrase(analysis, goal) || goal.roman.inversion > 0) return [];
  const home = homeKey(analysis);
  const tonic = home.mode === 'minor' ? home.tonic : noteNameAtFifths(fifthsPlace(home.tonic) + 3);
  return sameNoteName(goal.root, tonic) ? [{ tonic, mode: 'minor' }] : [];
}

function raisedSixth(analysis: Analysis, tone: Tone, next: Tone, key: Key, sure: boolean): Occurrence[] {
  const before = previousTone(analysis.texture, tone);
  const rises = semitone(next.pitch) > semitone(tone.pitch);
  // Up by step, down from the raised seventh (both belong to the dominant), or chromatically down: part of a line.
  if (rises && isStep(tone, next)) return [];
  if (before !== undefined && isDegree(before, key, 7, 1)) return [];
  if (next.pitch.step === tone.pitch.step) return [];
  if (!sure && (!isStep(tone, next) || !isDegree(next, key, 5, 0))) return [];
  return [
    about([tone, next], {
      // A leap away changes the member of the chord; a step back down shows that nothing was to be led up to.
      severity: sure && isStep(tone, next) && !isQuick(analysis.texture, tone) ? 'query' : 'remark',
      from: tone.at,
      until: next.until,
      message: `${inVoice(tone)} is the raised sixth degree of ${printKey(key)}, but the ${VOICE_WORDS[tone.voice]} goes to ${printPitch(writtenPitch(next))} instead of on to the raised seventh.`,
    }),
  ];
}

/**
 * The raised seventh that sinks by a tone when its chord is over. Down an augmented second it has a rule of its own;
 * over the dominant still, or held over as a suspension, it is part of a line.
 */
function raisedSeventh(analysis: Analysis, tone: Tone, next: Tone, key: Key): Occurrence[] {
  const { steps, semitones } = intervalBetween(tone.pitch, next.pitch);
  if (steps !== -1 || semitones !== -2 || isQuick(analysis.texture, tone)) return [];
  const [chord, goal] = [chordAt(analysis, tone.until - 1), chordAt(analysis, next.at)];
  if (chord === undefined || goal === undefined || sameNoteName(chord.root, goal.root)) return [];
  if (memberOf(chord, tone.pitch) === undefined || phraseBreaks(analysis.texture).has(next.at)) return [];
  return [
    about([tone, next], {
      severity: 'query',
      from: tone.at,
      until: next.until,
      message: `${inVoice(tone)} is the raised seventh degree of ${printKey(key)}, but the ${VOICE_WORDS[tone.voice]} sinks to ${printPitch(writtenPitch(next))} instead of rising to the tonic.`,
    }),
  ];
}

/** The unraised seventh that goes up to the tonic, over a chord that goes to the tonic as a dominant does. */
function plainSeventh(analysis: Analysis, tone: Tone, next: Tone, key: Key): Occurrence[] {
  if (!isStep(tone, next) || !isDegree(next, key, 1, 0) || semitone(next.pitch) < semitone(tone.pitch))
    return [];
  const chord = chordAt(analysis, tone.at);
  const dominant =
    chord !== undefined &&
    (chord.roman.degree === 5 || chord.roman.degree === 7) &&
    memberOf(chord, tone.pitch) !== undefined;
  if ((!dominant && isPassingBy(analysis.texture, tone)) || phraseBreaks(analysis.texture).has(tone.until))
    return [];
  const goal = chordAt(analysis, next.at);
  if (goal === undefined || !isTonic(goal)) return [];
  // Where a close waits for it to be raised, that is told.
  if (dullDominants(analysis).some(({ tones }) => tones.includes(tone))) return [];
  return [
    about([tone, next], {
      severity: 'remark',
      from: tone.at,
      until: next.until,
      message: `${inVoice(tone)} is the unraised seventh degree of ${printKey(key)}, but the ${VOICE_WORDS[tone.voice]} goes up with it to the tonic.`,
    }),
  ];
}

function isDegree(tone: Tone, key: Key, degree: number, alteration: number): boolean {
  const place = degreeOf(tone.pitch, key);
  return place.degree === degree && place.alteration === alteration;
}
