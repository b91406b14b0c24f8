import type { Analysis, Key } from '../harmony/analysis.ts';
import { memberOf } from '../harmony/questions/members.ts';
import { chordAt, keyAt } from '../harmony/questions/moments.ts';
import { departure } from '../harmony/questions/resolution.ts';
import { belongsToKey, isChordAsSpelt, otherSpelling } from '../harmony/questions/spelling.ts';
import { printKey } from '../harmony/words/labels.ts';
import { intervalBetween } from '../score/interval.ts';
import { type NoteName, sameNoteName } from '../score/pitch.ts';
import { VOICES } from '../score/score.ts';
import { isAllWritten, type Slice, type Tone, toneIn } from '../score/texture.ts';
import { beatLength, type Ticks } from '../score/time.ts';
import { about } from './occurrence.ts';
import { defineRule, type Occurrence } from './rule.ts';
import { inVoice } from './wording.ts';

export const misspeltNote = defineRule({
  id: 'misspelt-note',
  name: 'Misspelt note',
  family: 'chords',
  statement: 'A chromatic note is written with the letter that its chord and its key ask for.',
  why: 'On the keyboard G sharp and A flat are one key; on paper one is a leading note that rises and the other a sixth degree that falls. Singers read the letter, and tune and expect accordingly.',
  hints: [
    'Name the chord and see which letters its third, fifth and seventh have.',
    'Write the same sound with the other letter, and look where the note then wants to go.',
    'Notation: chords are spelt in thirds; raised notes rise, lowered notes fall.',
  ],
  source:
    'E. Gould, Behind Bars, 2011, chapter on accidentals, on the spelling of chords and chromatic lines (from memory)',
  severity: 'query',
  weight: 5,
  parameters: {},
  examples: {
    wrong: [
      {
        caption: 'The alto has Ab where the chord on E asks for a third above E.',
        text: `key: A minor
metre: 4/4
S: C5 B4 B4*2 | A4*4! |
A: A4 A4 Ab4*2 | E4*4! |
T: E4 F4 E4*2 | C4*4! |
B: A3 D3 E3*2 | A2*4! |`,
      },
    ],
    right: [
      {
        caption: 'With G# the chord is spelt in thirds.',
        text: `key: A minor
metre: 4/4
S: C5 B4 B4*2 | A4*4! |
A: A4 A4 G#4*2 | E4*4! |
T: E4 F4 E4*2 | C4*4! |
B: A3 D3 E3*2 | A2*4! |`,
      },
    ],
  },
  check: (analysis) => misspelt(analysis),
});

function misspelt(analysis: Analysis): Occurrence[] {
  const seen = new Set<Tone>(analysis.misspelt.map(({ tone }) => tone));
  const respelt = analysis.misspelt.map(({ tone, written }) =>
    occurrence(analysis, { ...tone, pitch: written }),
  );
  const others = analysis.texture.slices.flatMap((slice) => {
    const tones = VOICES.flatMap((voice) => toneIn(slice, voice) ?? []);
    return tones.flatMap((tone) => {
      if (seen.has(tone) || !isMisspelt(analysis, slice, tones, tone)) return [];
      seen.add(tone);
      return [occurrence(analysis, tone)];
    });
  });
  return [...respelt, ...others].sort((a, b) => a.from - b.from);
}

/** `tone` as it is written. */
function occurrence(analysis: Analysis, tone: Tone): Occurrence {
  return about([tone], {
    from: tone.at,
    until: tone.until,
    message: `${inVoice(tone)} is spelt with the wrong letter for its chord and key${keyWords(analysis, tone.at)}.`,
  });
}

/**
 * Under its other name the note would make the chord that sounds one that is built in thirds, or would belong to the
 * key; under the name it has it does neither.
 */
function isMisspelt(analysis: Analysis, slice: Slice, tones: readonly Tone[], tone: Tone): boolean {
  const key = keyAt(analysis, slice.at);
  if (key === undefined || belongsToKey(tone.pitch, key)) return false;
  if (risesByLetterOnly(analysis, tone, slice, key)) return true;
  const other = otherSpelling(tone.pitch);
  const chord = chordAt(analysis, slice.at);
  if (other === undefined || chord === undefined || leadsByLetter(analysis, tone)) return false;
  const names = tones.map((t): NoteName => t.pitch);
  const respelt = isChordAsSpelt(names.map((name) => (sameNoteName(name, tone.pitch) ? other : name)));
  // Built in thirds under both names (an augmented triad, a diminished seventh): the key decides.
  if (isChordAsSpelt(names)) return respelt && belongsToKey(other, key);
  // Where a voice is still to be written, it may make a chord of the note as it is spelt.
  return (
    (isAllWritten(slice) && respelt) ||
    (memberOf(chord, tone.pitch) === undefined && belongsToKey(other, key))
  );
}

/**
 * A note foreign to the key that goes up a semitone without changing its letter (F to F sharp, E flat to E),
 * to the root of a chord, which does belong: a leading note is meant, and written on the wrong line.
 */
function risesByLetterOnly(analysis: Analysis, tone: Tone, slice: Slice, key: Key): boolean {
  const next = departure(analysis.texture, tone);
  if (next === undefined || tone.until - tone.at < beatLength(slice.bar.metre)) return false;
  const { steps, semitones } = intervalBetween(tone.pitch, next.pitch);
  const goal = chordAt(analysis, next.at);
  if (
    steps !== 0 ||
    semitones !== 1 ||
    goal === undefined ||
    goal.quality === 'diminished' ||
    !sameNoteName(next.pitch, goal.root)
  )
    return false;
  return belongsToKey(next.pitch, key);
}

/** A raised note that rises to the next letter, or a lowered one that falls to it: spelt as it moves. */
function leadsByLetter(analysis: Analysis, tone: Tone): boolean {
  const next = departure(analysis.texture, tone);
  if (next === undefined) return false;
  const { steps, semitones } = intervalBetween(tone.pitch, next.pitch);
  return Math.abs(steps) === 1 && Math.abs(semitones) === 1;
}

function keyWords(analysis: Analysis, at: Ticks): string {
  const key = keyAt(analysis, at);
  return key === undefined ? '' : ` (${printKey(key)})`;
}
