import { describe, expect, test } from 'vitest';
import {
  intervalBetween,
  intervalName,
  intervalQuality,
  intervalUp,
  isDiminishedFifth,
  isOctave,
  isPerfectFifth,
  isUnison,
} from '../../src/score/interval.ts';
import {
  fifthsPlace,
  midiNumber,
  noteNameAtFifths,
  parseNoteName,
  parsePitch,
  printNoteName,
  printPitch,
} from '../../src/score/pitch.ts';

const pitch = (text: string) => parsePitch(text)!;
const name = (text: string) => parseNoteName(text)!;

describe('pitch', () => {
  test.each(['C4', 'F#4', 'Bb3', 'C##5', 'Dbb2', 'B9'])('%s is read and printed', (text) => {
    expect(printPitch(pitch(text))).toBe(text);
  });
  test.each(['', 'C', 'H4', 'c4', 'C#', 'C10', 'C###4', 'constructor4', '4'])('%j is refused', (text) => {
    expect(parsePitch(text)).toBeUndefined();
  });
  // MIDI 1.0 numbers: middle C is 60, the A above it 69.
  test.each([
    ['C4', 60],
    ['A4', 69],
    ['B#3', 60],
    ['Cb4', 59],
  ])('%s is MIDI note %i', (text, number) => {
    expect(midiNumber(pitch(text))).toBe(number);
  });
  test('the line of fifths runs both ways', () => {
    for (let place = -15; place <= 19; place++) expect(fifthsPlace(noteNameAtFifths(place))).toBe(place);
    expect(['Bbb', 'Fb', 'C', 'B', 'F#', 'B#'].map((n) => fifthsPlace(name(n)))).toEqual([
      -9, -8, 0, 5, 6, 12,
    ]);
    expect(printNoteName(noteNameAtFifths(-8))).toBe('Fb');
  });
});

describe('interval', () => {
  // Names as any rudiments book gives them; common practice, no source.
  test.each([
    ['C4', 'G4', 'perfect fifth'],
    ['B3', 'F4', 'diminished fifth'],
    ['F4', 'B4', 'augmented fourth'],
    ['Eb4', 'F#4', 'augmented second'],
    ['F#4', 'Eb4', 'augmented second'],
    ['C4', 'Eb5', 'minor tenth'],
    ['C4', 'C5', 'octave'],
    ['C4', 'C4', 'unison'],
    ['C4', 'C#4', 'augmented unison'],
    ['C4', 'C#5', 'augmented octave'],
    ['C#4', 'Bb4', 'diminished seventh'],
    ['D4', 'C5', 'minor seventh'],
  ])('%s to %s is a %s', (from, to, expected) => {
    expect(intervalName(intervalBetween(pitch(from), pitch(to)))).toBe(expected);
  });
  test('fifths and octaves are told by spelling, compounds included', () => {
    expect(isPerfectFifth(intervalBetween(pitch('C3'), pitch('G4')))).toBe(true);
    expect(isPerfectFifth(intervalBetween(pitch('C3'), pitch('Abb4')))).toBe(false);
    expect(isDiminishedFifth(intervalBetween(pitch('B2'), pitch('F4')))).toBe(true);
    expect(isDiminishedFifth(intervalBetween(pitch('F2'), pitch('B3')))).toBe(false);
    expect(isOctave(intervalBetween(pitch('C3'), pitch('C5')))).toBe(true);
    expect(isOctave(intervalBetween(pitch('C3'), pitch('C3')))).toBe(false);
    expect(isUnison(intervalBetween(pitch('C3'), pitch('B#2')))).toBe(false);
  });
  test('note names are measured upwards', () => {
    expect(intervalUp(name('G'), name('F'))).toEqual({ steps: 6, semitones: 10 });
    expect(intervalUp(name('C'), name('B#'))).toEqual({ steps: 6, semitones: 12 });
    expect(intervalUp(name('C'), name('Cb'))).toEqual({ steps: 0, semitones: -1 });
    expect(intervalQuality(intervalUp(name('Ab'), name('F#')))).toBe('augmented');
  });
});
