import { describe, expect, test } from 'vitest';
import { compareWithGiven } from '../../src/desk/given.ts';
import { readNotation } from '../../src/notation/index.ts';
import type { Score } from '../../src/score/score.ts';

function score(text: string): Score {
  const { score, problems } = readNotation(text);
  expect(problems).toEqual([]);
  return score;
}

const TUNE = 'key: G major\nmetre: 4/4\nS: G4 A4 B4 G4 | C5 B4 A4*2! | B4 C5 D5 B4 | A4 F#4 G4*2! |';
const given = score(TUNE);
const LOWER = 'A: D4 D4 D4 E4 | E4 D4 F#4*2 |\nB: G3 F#3 G3 E3 | C3 G3 D3*2 |';

const messages = (text: string, from: Score = given) =>
  compareWithGiven(from, score(text)).departures.map(({ message }) => message);

describe('the given melody', () => {
  test('untouched: nothing to say, whatever the other voices do', () => {
    const compared = compareWithGiven(given, score(`${TUNE}\n${LOWER}`));
    expect(compared.departures).toEqual([]);
    expect(compared.voices).toEqual(['S']);
    expect(compared.general).toEqual([]);
    expect(compared.summary).toBe('The given soprano is as in the brief.');
  });

  test('a changed pitch is shown where it stands', () => {
    const { departures } = compareWithGiven(given, score(TUNE.replace('C5 B4 A4*2!', 'C5 Bb4 A4*2!')));
    expect(departures).toEqual([
      {
        kind: 'changed pitch',
        voice: 'S',
        bar: '2',
        at: 5,
        message: 'Bar 2, beat 2: the soprano has B♭4; the brief has B4.',
      },
    ]);
  });

  test('the same sound spelt otherwise is told apart', () => {
    expect(messages(TUNE.replace('A4 F#4 G4', 'A4 Gb4 G4'))).toEqual([
      'Bar 4, beat 2: the soprano is spelt G♭4; the brief has F♯4, which sounds the same.',
    ]);
  });

  test('changed rhythm, missing and added notes', () => {
    expect(messages(TUNE.replace('G4 A4 B4 G4', 'G4*3/2 A4/2 B4 G4'))).toEqual([
      'Bar 1, beat 1: G4 in the soprano lasts 1½ beats; in the brief 1 beat.',
      'Bar 1, beat 2½: A4 in the soprano begins here; in the brief it begins at beat 2.',
    ]);
    expect(messages(TUNE.replace('C5 B4 A4*2!', 'C5 (B4 C5) A4*2!'))).toEqual([
      'Bar 2, beat 2: B4 in the soprano lasts ½ beat; in the brief 1 beat.',
      'Bar 2, beat 2½: C5 in the soprano is not in the brief.',
    ]);
    expect(messages(TUNE.replace('B4 C5 D5 B4', 'B4 r D5 B4'))).toEqual([
      'Bar 3, beat 2: C5 of the given soprano is missing.',
    ]);
  });

  test('tied crotchets sound as a minim, also over the barline', () => {
    expect(messages(TUNE.replace('A4*2!', 'A4_ A4!'))).toEqual([]);
    const tied = score('metre: 2/4\nS: C5 D5 | = E5 |');
    expect(messages('metre: 2/4\nS: C5 D5_ | D5 E5 |', tied)).toEqual([]);
    expect(messages('metre: 2/4\nS: C5 D5 | D5 E5 |', tied)).toEqual([
      'Bar 2, beat 1: D5 in the soprano is struck again; in the brief it is held over the barline.',
    ]);
  });

  test('an unwritten bar is not written yet; it is no missing bar', () => {
    const compared = compareWithGiven(
      given,
      score(
        'key: G major\nmetre: 4/4\nS: G4 A4 B4 G4 | C5 B4 A4*2! | ?*4 | ?*4 |\nB: G3 A3 B3 G3 | A3 B3 D3*2 | G3*4 | G3*4 |',
      ),
    );
    expect(compared.departures.map(({ kind, bar }) => [kind, bar])).toEqual([
      ['not written', '3'],
      ['not written', '4'],
    ]);
    expect(compared.summary).toBe(
      'The given soprano is as in the brief as far as written. Not written yet: bars 3 and 4.',
    );
  });
});

describe('bars', () => {
  test('a bar put in is named, and the bars after it still answer', () => {
    const compared = compareWithGiven(given, score(TUNE.replace('| B4 C5', '| D5 C5 B4 A4 | B4 C5')));
    expect(compared.departures.map(({ message }) => message)).toEqual(['Bar 3 is not in the brief.']);
    expect(compared.bars.map(({ given, script }) => [given, script])).toEqual([
      ['1', '1'],
      ['2', '2'],
      [undefined, '3'],
      ['3', '4'],
      ['4', '5'],
    ]);
  });

  test('a bar left out is named by the brief, and what follows still answers', () => {
    expect(messages(TUNE.replace('| C5 B4 A4*2! ', ''))).toEqual(['Bar 2 of the brief is missing here.']);
  });

  test('a bar wholly rewritten is the same bar changed, not one missing and one added', () => {
    const { departures } = compareWithGiven(given, score(TUNE.replace('B4 C5 D5 B4', 'D5 E5 F#5 D5')));
    expect(departures.every(({ kind, bar }) => kind === 'changed pitch' && bar === '3')).toBe(true);
    expect(departures).toHaveLength(4);
  });
});

describe('transposition', () => {
  const inA = score(
    'key: A major\nmetre: 4/4\nS: A4 B4 C#5 A4 | D5 C#5 B4*2! | C#5 D5 E5 C#5 | B4 G#4 A4*2! |',
  );

  test('the whole in another key is recognised and its notes compared there', () => {
    const compared = compareWithGiven(given, inA);
    expect(compared.departures).toEqual([]);
    expect(compared.transposition).toEqual({
      steps: 1,
      semitones: 2,
      message:
        'The whole stands a major second higher than the brief (A major for G major); its notes are compared as transposed.',
    });
    expect(compared.general).toEqual([]);
  });

  test('a wrong note in the other key is told in that key', () => {
    const text = 'key: A major\nmetre: 4/4\nS: A4 B4 C#5 A4 | D5 C5 B4*2! | C#5 D5 E5 C#5 | B4 G#4 A4*2! |';
    expect(messages(text)).toEqual(['Bar 2, beat 2: the soprano has C5; the brief has C♯5.']);
  });

  test('an octave lower', () => {
    const compared = compareWithGiven(
      given,
      score(TUNE.replaceAll(/([A-G]#?)(\d)/g, (_, n, o) => `${n}${o - 1}`)),
    );
    expect(compared.departures).toEqual([]);
    expect(compared.transposition?.message).toBe(
      'The whole stands an octave lower than the brief; its notes are compared as transposed.',
    );
  });

  test('the key signature forgotten is told', () => {
    expect(compareWithGiven(given, score(TUNE.replace('G major', 'C major'))).general).toEqual([
      'The key signature is that of C major; the brief has G major.',
    ]);
  });

  test('one changed bar is no change of key', () => {
    const compared = compareWithGiven(given, score(TUNE.replace('B4 C5 D5 B4', 'C#5 D5 E5 C#5')));
    expect(compared.transposition).toBeUndefined();
  });
});

describe('what else a brief may give', () => {
  test('a given bass and opening chords are checked; what is left open is not', () => {
    const brief = score(`${TUNE}\nA: D4 ? ? ? | ?*4 |\nB: G3 F#3 G3 E3 | ?*4 |`);
    const kept = `${TUNE}\nA: D4 D4 D4 E4 | E4 D4 F#4*2 |\nB: G3 F#3 G3 E3 | C3 G3 D3*2 |`;
    expect(compareWithGiven(brief, score(kept)).voices).toEqual(['S', 'A', 'B']);
    expect(messages(kept, brief)).toEqual([]);
    expect(messages(kept.replace('A: D4', 'A: E4').replace('F#3 G3 E3', 'F#3 G3 D3'), brief)).toEqual([
      'Bar 1, beat 1: the alto has E4; the brief has D4.',
      'Bar 1, beat 4: the bass has D3; the brief has E3.',
    ]);
  });

  test('an upbeat and another metre', () => {
    const brief = score('key: C major\nmetre: 3/4\nupbeat: 1\nS: G4 | C5*2 D5 | E5*2! |');
    expect(messages('key: C major\nmetre: 3/4\nupbeat: 1\nS: G4 | C5*2 E5 | E5*2! |', brief)).toEqual([
      'Bar 1, beat 3: the soprano has E5; the brief has D5.',
    ]);
    expect(
      compareWithGiven(brief, score('key: C major\nmetre: 3/2\nupbeat: 1\nS: G4 | C5*2 D5 | E5*2! |'))
        .general,
    ).toEqual(['From the upbeat on the metre is 3/2; the brief has 3/4.']);
  });

  test('a brief without notes says so, and inputs are not changed', () => {
    const empty = Object.freeze(score('metre: 4/4\nS: ?*4 |'));
    expect(compareWithGiven(empty, given).summary).toBe('The brief gives no notes.');
  });
});
