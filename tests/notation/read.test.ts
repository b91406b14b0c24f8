import { describe, expect, test } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { printPitch } from '../../src/score/pitch.ts';
import type { VoiceName } from '../../src/score/score.ts';
import { CROTCHET, crotchets } from '../../src/score/time.ts';

/** A voice as short text: `C4:1` a crotchet, `-:1` a rest, `?:1` a gap, `~` tied on, `!` a fermata. */
function voice(text: string, name: VoiceName = 'S'): string {
  const { score, problems } = readNotation(text);
  expect(problems).toEqual([]);
  return score.voices[name]
    .map((event) => {
      const what = event.kind === 'note' ? printPitch(event.pitch) : event.kind === 'rest' ? '-' : '?';
      const tied = event.kind === 'note' && event.tied ? '~' : '';
      const fermata = event.kind !== 'gap' && event.fermata ? '!' : '';
      return `${what}:${crotchets(event.duration)}${tied}${fermata}`;
    })
    .join(' ');
}

test('phrase marks stand at a note as they are written in the README', () => {
  const { score, problems } = readNotation("S: G4 A' B4' C5~ | D5*2' E5*2!~ |");
  expect(problems).toEqual([]);
  expect(score.voices.S.map((event) => (event.kind === 'note' ? event.phrase : event.kind))).toEqual([
    undefined,
    'ends',
    'ends',
    'goes on',
    'ends',
    'goes on',
  ]);
});

describe('sounds and lengths', () => {
  test.each([
    ['one note is one beat', 'S: C4 D4 E4 F4 |', 'C4:1 D4:1 E4:1 F4:1'],
    ['the octave carries on', 'S: G4 A B C5 |', 'G4:1 A4:1 B4:1 C5:1'],
    ['accidentals', 'S: F#4 Bb C## Dbb |', 'F#4:1 Bb4:1 C##4:1 Dbb4:1'],
    ['printed accidentals and x', 'S: F♯4 B♭ Cx D♭♭ |', 'F#4:1 Bb4:1 C##4:1 Dbb4:1'],
    ['lengths', 'S: C4*2 D*3/2 E/2 |', 'C4:2 D4:1.5 E4:0.5'],
    [
      'a bracket shares one beat',
      'S: (C5 B4) (A B C5) D*2 |',
      'C5:0.5 B4:0.5 A4:0.3333333333333333 B4:0.3333333333333333 C5:0.3333333333333333 D5:2',
    ],
    [
      'a bracket with a length',
      'S: (C5 D E)*2 C*2 |',
      `${['C5', 'D5', 'E5'].map((p) => `${p}:${2 / 3}`).join(' ')} C5:2`,
    ],
    ['holding', 'S: C5 = (= B4) A |', 'C5:2.5 B4:0.5 A4:1'],
    ['holding over a barline ties', 'S: C5*4 | = D5*3 |', 'C5:4~ C5:1 D5:3'],
    ['a tie inside the bar', 'S: C5_ C5/2 D5/2 E5*2 |', 'C5:1~ C5:0.5 D5:0.5 E5:2'],
    ['a tie to another pitch is none', 'S: C5_ D5 E5*2 |', 'C5:1 D5:1 E5:2'],
    ['fermata, before or after the length', 'S: C5*2! D!*2 |', 'C5:2! D5:2!'],
    ['rests and gaps; gaps run together', 'S: r r*2 ? | ? ? C5 C5', '-:1 -:2 ?:1 ?:2 C5:1 C5:1'],
    ['a bar not finished is left open', 'S: C5 D5', 'C5:1 D5:1 ?:2'],
    [
      'a full bar at the line’s end is closed',
      'S: C5 D E F\nS: G A B C',
      'C5:1 D5:1 E5:1 F5:1 G5:1 A5:1 B5:1 C5:1',
    ],
  ])('%s', (_name, text, expected) => {
    expect(voice(text)).toBe(expected);
  });

  test('in 3/2 the beat is a minim', () => {
    expect(voice('metre: 3/2\nS: C5 D5/2 E5/2 F5 |')).toBe('C5:2 D5:1 E5:1 F5:2');
  });
});

describe('bars', () => {
  test('an upbeat is bar 0 and begins late in its bar', () => {
    const { score } = readNotation('upbeat: 1\nS: G4 | C5*4 | D5*3 ||');
    expect(score.bars.map((bar) => [bar.number, crotchets(bar.duration), crotchets(bar.offset)])).toEqual([
      ['0', 1, 3],
      ['1', 4, 0],
      ['2', 3, 0],
    ]);
    expect(score.bars.flatMap((bar) => bar.misfits)).toEqual([]);
  });

  test('a bar that does not add up is kept and noted', () => {
    const { score, problems } = readNotation('S: C5 D5 E5 F5 |\nA: C4 D4 E4 |\nT: C4*5 |');
    expect(problems).toEqual([]);
    expect(score.bars[0]!.duration).toBe(5 * CROTCHET);
    expect(score.bars[0]!.misfits).toEqual([
      { voice: 'A', written: 3 * CROTCHET, expected: 4 * CROTCHET },
      { voice: 'T', written: 5 * CROTCHET, expected: 4 * CROTCHET },
    ]);
  });

  test('a bar split by a repeat is one bar in two halves', () => {
    const { score } = readNotation('S: C5*4 | D5*3 :| E5 | F5*4 ||');
    expect(score.bars.map((bar) => bar.number)).toEqual(['1', '2', '2', '3']);
    expect(crotchets(score.bars[2]!.offset)).toBe(3);
    expect(score.bars[1]!.repeatEnd).toBe(true);
    expect(score.bars.flatMap((bar) => bar.misfits)).toEqual([]);
  });

  test.each([
    ['at the head', 'tempo: 60\nS: C5*4 | D5*4 |\nA: C4*4 | D4*4 |', [60, 60]],
    ['between the voices of the system', 'S: C5*4 | D5*4 |\ntempo: 60\nA: C4*4 | D4*4 |', [60, 60]],
    ['after all music', 'S: C5*4 | D5*4 |\nA: C4*4 | D4*4 |\ntempo: 60', [60, 60]],
    ['between systems', 'S: C5*4 |\nA: C4*4 |\ntempo: 60.5\nS: D5*4 |\nA: D4*4 |', [undefined, 60.5]],
    ['between systems of one voice', 'tempo: 90\nS: C5*4 |\n\ntempo: 60\nS: D5*4 |\nA: D4*4 |', [90, 60]],
  ])('a tempo %s', (_where, text, tempos) => {
    const { score, problems } = readNotation(text);
    expect(problems).toEqual([]);
    expect(score.bars.map((bar) => bar.tempo)).toEqual(tempos);
    expect(score.tempo).toBe(tempos[0]);
    expect(score.voices.A.map((event) => event.kind).at(-1)).toBe('note');
  });

  test('key and metre may change between systems', () => {
    const { score } = readNotation(
      'key: G major\nS: G4*4 |\n\nkey: D minor\nmetre: 3/4\nS: A4*3 |\nB: D3*3 |',
    );
    expect(score.bars.map((bar) => [bar.key, bar.metre])).toEqual([
      [
        { fifths: 1, mode: 'major' },
        { beats: 4, unit: 4 },
      ],
      [
        { fifths: -1, mode: 'minor' },
        { beats: 3, unit: 4 },
      ],
    ]);
    expect(score.voices.B.map((event) => event.kind)).toEqual(['gap', 'note']);
  });

  test('a voice left out of one system lines up in the next', () => {
    const text = 'S: C5*4 | D5*4 |\nB: C3*4 | B2*4 |\n\nS: E5*4 |\nA: G4*4 |\nB: C3*4 |';
    expect(voice(text, 'A')).toBe('?:4 ?:4 G4:4');
  });

  test('systems may break in the middle of a bar', () => {
    const text = 'S: C5 D5\nB: C3 B2\nS: E5 F5 |\nB: C3 D3 |';
    expect(voice(text, 'B')).toBe('C3:1 B2:1 C3:1 D3:1');
  });
});

describe('complaints name the place, what stood there and what was expected', () => {
  test.each([
    ['S: c5', 1, 4, '"c5" begins with a small letter; note names are capitals here, and "C5" was expected.'],
    [
      'S: C',
      1,
      4,
      '"C" has no octave number, and no note stands before it to take one from; one such as "C4" was expected.',
    ],
    ['S: H4', 1, 4, '"H4" is not a note name here; B stands for B natural and Bb for B flat.'],
    [
      'S: C4*x',
      1,
      6,
      `"*x" after "C4" could not be read; a length (*2, /2, *3/2), "!" for a fermata, "_" for a tie, "'" for the end of a phrase or "~" where none ends was expected.`,
    ],
    [
      'S: C4/0',
      1,
      6,
      `"/0" after "C4" could not be read; a length (*2, /2, *3/2), "!" for a fermata, "_" for a tie, "'" for the end of a phrase or "~" where none ends was expected.`,
    ],
    [
      'S: C4/11',
      1,
      4,
      'The length of "C4/11" is finer than can be counted; lengths such as *2, /2, /3, /4 or *3/2 were expected.',
    ],
    [
      'S: (C4 D4 | E4',
      1,
      4,
      'The bracket "(C4 D4" is not closed; ")" was expected before the barline or the end of the line.',
    ],
    ['S: ()', 1, 4, 'The bracket is empty; at least one note was expected between "(" and ")".'],
    ['S: =', 1, 4, '"=" holds the note before it, but no note stands before it; a note was expected.'],
    [
      'S: (C4*2 D4)',
      1,
      5,
      '"C4*2" has a length of its own; in a bracket the notes share the time equally, so none was expected.',
    ],
    [
      '\nkey: G',
      2,
      1,
      '"key: G" could not be read; after "key:" a key such as "G major", "F# minor" or "2 flats" was expected.',
    ],
    [
      '  metre: 5',
      1,
      3,
      '"metre: 5" could not be read; after "metre:" a metre such as 4/4, 3/4 or 3/2 was expected.',
    ],
    [
      'upbeat: 4',
      1,
      1,
      '"upbeat: 4" could not be read; after "upbeat:" the length of the upbeat in beats, such as 1 or 1/2, shorter than a bar was expected.',
    ],
    [
      'C5 D5',
      1,
      1,
      'This line begins with "C5 D5"; a voice (S:, A:, T: or B:) or a header such as "key: G major" was expected.',
    ],
  ])('%j', (text, line, column, message) => {
    expect(readNotation(text).problems).toEqual([{ line, column, message }]);
  });

  test('reading goes on: one call reports all of them, and the rest is there', () => {
    const { score, problems } = readNotation('key: H major\nS: C5 X D5 h |\nA: E4 ( F4 G4 |\ncolour: red');
    expect(problems.map(({ line, column }) => [line, column])).toEqual([
      [1, 1],
      [2, 7],
      [2, 12],
      [3, 7],
      [4, 1],
    ]);
    expect(score.voices.S.map((event) => event.kind)).toEqual(['note', 'gap', 'note', 'gap']);
  });

  test('a flood of problems is cut short, and says so', () => {
    const { problems } = readNotation(`S: ${'X '.repeat(500)}`);
    expect(problems).toHaveLength(51);
    expect(problems.at(-1)?.message).toBe('There are more problems after this one; mend these first.');
  });

  test('headers of a kindred file are handed over', () => {
    const reading = readNotation('given: S\nS: C5*4 |', { extraHeaders: ['given'] });
    expect(reading.problems).toEqual([]);
    expect(reading.headers).toEqual([{ name: 'given', value: 'S', line: 1 }]);
  });
});

test('spans say where in the text each note stands', () => {
  const { spans } = readNotation('S: C5 (D5 E5) ? F5 |');
  expect(spans.map(({ at, column, length }) => [crotchets(at), column, length])).toEqual([
    [0, 4, 2],
    [1, 8, 2],
    [1.5, 11, 2],
    [3, 17, 2],
  ]);
});

describe('limits', () => {
  test('stops at more notes than a review can take, and says so once for each voice', () => {
    const { score, problems } = readNotation(`S: ${'C5 D5 E5 F5 | '.repeat(300)}`);
    expect(score.voices.S.filter((event) => event.kind === 'note')).toHaveLength(1_000);
    expect(problems.map((problem) => problem.message)).toEqual([
      'More than 1,000 notes and rests in one voice; the rest is not read. Split the text into shorter ones.',
    ]);
  });
});
