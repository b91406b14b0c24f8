import { describe, expect, it } from 'vitest';
import {
  isBrief,
  onlyGiven,
  parseDuration,
  printBrief,
  printDuration,
  readBrief,
} from '../../src/brief/brief.ts';
import { type CheckItem, lastCheck } from '../../src/brief/last-check.ts';
import { compareWithGiven } from '../../src/desk/given.ts';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { secondsOf } from '../../src/score/tempo.ts';

const BRIEF = `task: add alto, tenor and bass
profile: chorale
least length: 0:20
least together: 6:00
title: Kite
tempo: 60
key: C major
metre: 4/4
S: C5 D5 E5 C5 | D5 B4 C5*2! |
`;
const WHOLE = `title: Kite
tempo: 60
key: C major
metre: 4/4
S: C5 D5 E5 C5 | D5 B4 C5*2! |
A: G4 G4 G4 G4 | F4 G4 G4*2! |
T: E4 B3 C4 E4 | A3 D4 E4*2! |
B: C4 G3 C3 C3 | F3 G3 C3*2! |
`;

describe('a brief', () => {
  it('is read with its headers', () => {
    const { brief, problems } = readBrief(BRIEF);
    expect(problems).toEqual([]);
    expect(brief).toMatchObject({
      task: 'add alto, tenor and bass',
      profile: 'chorale',
      leastSeconds: 20,
      leastTogetherSeconds: 360,
    });
    expect(brief.score.title).toBe('Kite');
  });
  it('may withhold helps, and says where it names none', () => {
    const read = readBrief(BRIEF.replace('title:', 'without: Style, room\ntitle:'));
    expect(read.problems).toEqual([]);
    expect(read.brief.without).toEqual(['style', 'room']);
    expect(readBrief(printBrief(read.brief)).brief.without).toEqual(['style', 'room']);
    const { problems } = readBrief(BRIEF.replace('title:', 'without: answers\ntitle:'));
    expect(problems).toMatchObject([
      {
        line: 5,
        message: expect.stringContaining('marks, hints, ways out, numerals, style, room or playback'),
      },
    ]);
  });
  it('is read as it was printed', () => {
    const { brief } = readBrief(BRIEF);
    const again = readBrief(printBrief(brief));
    expect(again.problems).toEqual([]);
    expect(again.brief).toEqual(brief);
  });
  it('says where a length makes no sense, and reads on', () => {
    const { problems } = readBrief(BRIEF.replace('0:20', 'twenty').replace('B4', 'X4'));
    expect(problems.map((p) => p.line)).toEqual([3, 9]);
    expect(problems[0]!.message).toMatch(/minutes and seconds such as 6:00/);
  });
  it('is told from an exercise by its headers', () => {
    expect(isBrief(BRIEF)).toBe(true);
    expect(isBrief(WHOLE)).toBe(false);
  });
  it('is made from a score by choosing what is given', () => {
    const { score } = readNotation(WHOLE);
    const given = onlyGiven(score, { S: true, A: false, T: false, B: 20_160 });
    const lines = printNotation(given).split('\n');
    expect(lines.find((l) => l.startsWith('S:'))).toContain('C5 D E C | D B4 C5*2!');
    expect(lines.find((l) => l.startsWith('B:'))).toMatch(/C4 G3 \?\*2 \|/);
    expect(given.voices.A.every((event) => event.kind === 'gap')).toBe(true);
    expect(readNotation(printNotation(given)).score).toEqual(given);
  });
  it('counts lengths in minutes and seconds', () => {
    expect([parseDuration('6:00'), parseDuration('0:45'), parseDuration('6:75'), parseDuration('6')]).toEqual(
      [360, 45, undefined, undefined],
    );
    expect([printDuration(360), printDuration(45.9)]).toEqual(['6:00', '0:45']);
  });
});

describe('the last check', () => {
  const check = (
    text: string,
    notes: Record<string, string> = {},
    otherSeconds = 0,
  ): Record<string, CheckItem> => {
    const review = reviewScore(readNotation(text).score, CHORALE);
    const { brief } = readBrief(BRIEF);
    const items = lastCheck({
      review,
      brief,
      given: compareWithGiven(brief.score, review.score),
      notes,
      usualTempo: 72,
      otherSeconds,
      leastTogetherSeconds: 360,
    });
    return Object.fromEntries(items.map((item) => [item.id, item]));
  };
  it('finds the beats that are still to be written, by voice and bar', () => {
    const items = check(WHOLE.replace('D4 E4*2!', '? ?*2'));
    expect(items.written).toMatchObject({ verdict: 'not yet' });
    expect(items.written!.details.map((d) => d.text)).toEqual(['The tenor is not complete in bar 2.']);
    expect(check(WHOLE).written!.verdict).toBe('done');
  });
  it('says of a tune alone which voices are to be written, and claims nothing of them', () => {
    const tune = 'key: C major\nmetre: 4/4\nupbeat: 1\nS: G4 | E5 D5 C5 D5 | E5 D5 C5 B4 | C5*3 |';
    const items = check(tune);
    expect(items.written!.details.map((d) => d.text)).toEqual([
      'The alto is still to be written.',
      'The tenor is still to be written.',
      'The bass is still to be written.',
    ]);
    expect(items.faults!.sentence).toBe('No faults stand in what is written so far.');
    expect(items.ranges!.sentence).toBe('What is written so far stays where a choir can sing it.');
    const begun = check(`${tune}\nB: C3 | C3 G3 ? ?`).written!.details.at(-1)!.text;
    expect(begun).toBe('The bass is not complete from bar 1 to bar 3.');
  });
  it('sees that what was given was changed', () => {
    expect(check(WHOLE).given!.verdict).toBe('done');
    const changed = check(WHOLE.replace('E5 C5 |', 'E5 D5 |')).given!;
    expect(changed.verdict).toBe('not yet');
    expect(changed.details[0]!.text).toMatch(/bar 1, beat 4/i);
  });
  it('counts faults, and keeps the pupil’s own word beside those that are meant', () => {
    const wrong = WHOLE.replace('A: G4 G4', 'A: G4 A4')
      .replace('B: C4 G3', 'B: C4 D4')
      .replace('T: E4 B3', 'T: E4 F4');
    const faults = check(wrong).faults!;
    expect(faults.verdict).toBe('not yet');
    const id = faults.details[0]!.finding!;
    const noted = check(
      wrong,
      Object.fromEntries(faults.details.map((d) => [d.finding!, 'It is the style of the tune.'])),
    ).faults!;
    expect(noted.verdict).toBe('look');
    expect(noted.details.find((d) => d.finding === id)!.text).toContain(
      'Your word: “It is the style of the tune.”',
    );
  });
  it('adds the other composition to the length', () => {
    expect(secondsOf(readNotation(WHOLE).score, 72)).toBe(8);
    expect(check(WHOLE).length!.verdict).toBe('not yet');
    expect(check(WHOLE).together!.sentence).toMatch(/not told yet/);
    expect(check(WHOLE, {}, 351).together).toMatchObject({
      verdict: 'not yet',
      sentence: 'Both together last 5:59; 6:00 is asked for, 0:01 more.',
    });
    expect(check(WHOLE, {}, 352).together!.verdict).toBe('done');
  });
  it('says nothing of another composition that nobody asked for or told of', () => {
    const review = reviewScore(readNotation(WHOLE).score, CHORALE);
    const asked = { review, notes: {}, usualTempo: 72, leastTogetherSeconds: 360 };
    const ids = (otherSeconds: number) => lastCheck({ ...asked, otherSeconds }).map(({ id }) => id);
    expect(ids(0)).not.toContain('together');
    expect(ids(200)).toContain('together');
  });
  it('doesn’t blame a phrase still to be written for having no cadence', () => {
    const half = readNotation(
      'key: C major\nmetre: 4/4\nS: C5 D5 B4 C5! | E5 F5 D5 E5! |\nA: G4 A4 G4 G4 | ?*4 |\nT: E4 F4 D4 E4 | ?*4 |\nB: C3 F3 G3 C3 | ?*4 |',
    ).score;
    const review = reviewScore(half, CHORALE);
    const item = lastCheck({
      review,
      notes: {},
      usualTempo: 72,
      otherSeconds: 0,
      leastTogetherSeconds: 360,
    }).find(({ id }) => id === 'phrases')!;
    expect(item).toMatchObject({
      verdict: 'not yet',
      sentence: '1 phrase written so far closes with a cadence; 1 phrase end is still to be written.',
      details: [],
    });
  });
});
