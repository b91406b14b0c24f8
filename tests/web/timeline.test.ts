import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { endOf } from '../../src/score/score.ts';
import { CROTCHET } from '../../src/score/time.ts';
import {
  beatsIn,
  countInFor,
  frequencyOf,
  loudness,
  soundingsOf,
  startingNotes,
  timelineOf,
} from '../../web/sound/timeline.ts';

const score = (text: string) => readNotation(text).score;
const FERMATA = score('S: C5 D5 E5! F5 | G5*4 |');

describe('the timeline', () => {
  it('gives a crotchet its length by the tempo', () => {
    const timeline = timelineOf(score('S: C5*4 |'), 120);
    expect(timeline.secondsAt(3 * CROTCHET)).toBeCloseTo(1.5);
  });
  it('changes its pace at a barline, under a tied note too, and in proportion to the tempo chosen', () => {
    const music = score('tempo: 60\nS: C5*3 D5 |\ntempo: 120\nS: =*2 E5*2 |\ntempo: 30\nS: F5*4 |');
    const seconds = (tempo: number) =>
      [4, 6, 8, 12].map((beat) =>
        Number(
          timelineOf(music, tempo)
            .secondsAt(beat * CROTCHET)
            .toFixed(3),
        ),
      );
    expect(seconds(60)).toEqual([4, 5, 6, 14]);
    expect(seconds(120)).toEqual([2, 2.5, 3, 7]);
    expect(countInFor(music, 4 * CROTCHET, 60).seconds).toBe(2);
  });
  it('draws out what stands under a fermata, and only that', () => {
    const timeline = timelineOf(FERMATA, 60);
    const lengths = [0, 1, 2, 3].map(
      (i) => timeline.secondsAt((i + 1) * CROTCHET) - timeline.secondsAt(i * CROTCHET),
    );
    expect(lengths.map((l) => Number(l.toFixed(3)))).toEqual([1, 1, 1.6, 1]);
  });
  it('goes both ways', () => {
    const timeline = timelineOf(FERMATA, 72);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: endOf(FERMATA) }), (at) => {
        expect(timeline.ticksAt(timeline.secondsAt(at))).toBeCloseTo(at, 3);
      }),
    );
  });
  it('stays at the end, and knows an empty score', () => {
    expect(timelineOf(FERMATA, 60).ticksAt(1e6)).toBe(endOf(FERMATA));
    expect(timelineOf(score(''), 60).secondsAt(10)).toBe(0);
  });
});

describe('what sounds', () => {
  const music = score('S: C5_ C5 D5*2 |\nB: C3*4 |');
  it('is one sound for tied notes, cut to the stretch that is played', () => {
    const timeline = timelineOf(music, 60);
    const sounds = soundingsOf(music, timeline, CROTCHET, 3 * CROTCHET);
    expect(sounds.map(({ voice, from, until }) => [voice, from, until])).toEqual([
      ['S', 0, 1],
      ['B', 0, 2],
      ['S', 1, 2],
    ]);
  });
  it('is in tune: A4 is 440 Hz, middle C 261.63', () => {
    expect(frequencyOf(69)).toBe(440);
    expect(frequencyOf(60)).toBeCloseTo(261.63, 2);
  });
  it('has only the voices that are to be heard alone', () => {
    const volume = { S: 0.8, A: 0.5, T: 0.5, B: 1 };
    expect(loudness(volume, [])).toEqual(volume);
    expect(loudness(volume, ['S', 'B'])).toEqual({ S: 0.8, A: 0, T: 0, B: 1 });
  });
});

describe('the count-in', () => {
  it('is a bar before a bar’s beginning', () => {
    const { clicks, seconds } = countInFor(score('metre: 3/4\nS: C5*3 |'), 0, 60);
    expect(clicks.map((c) => c.strong)).toEqual([true, false, false]);
    expect(seconds).toBe(3);
  });
  it('stops where an upbeat enters', () => {
    expect(countInFor(score('upbeat: 1\nS: G4 | C5*4 |'), 0, 120)).toMatchObject({ seconds: 1.5 });
  });
  it('counts minims in 3/2', () => {
    expect(countInFor(score('metre: 3/2\nS: C5*3 |'), 0, 60).seconds).toBe(6);
  });
});

describe('playing along', () => {
  const { score } = readNotation(
    'metre: 3/4\nupbeat: 1\nS: G4 | A4 B4 C5 | D5*3 |\nB: G3 | F#3 G3 A3 | ?*3 |',
  );
  it('clicks on each beat, strong on the first of a bar', () => {
    const clicks = beatsIn(score, timelineOf(score, 60), 0, endOf(score));
    expect(clicks.map(({ at }) => at)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(clicks.map(({ strong }) => strong)).toEqual([false, true, false, false, true, false, false]);
    expect(beatsIn(score, timelineOf(score, 60), 2 * CROTCHET, 4 * CROTCHET).map(({ at }) => at)).toEqual([
      0, 1,
    ]);
  });
  it('gives the choir its notes from the bass up, where they begin', () => {
    const notes = startingNotes(score, CROTCHET);
    expect(notes.map(({ voice, frequency }) => [voice, Math.round(frequency)])).toEqual([
      ['B', 185],
      ['S', 440],
    ]);
  });
  it('silences a voice, unless one is heard alone', () => {
    const volume = { S: 1, A: 1, T: 1, B: 1 };
    expect(loudness(volume, [], ['A'])).toEqual({ S: 1, A: 0, T: 1, B: 1 });
    expect(loudness(volume, ['A'], ['A'])).toEqual({ S: 0, A: 1, T: 0, B: 0 });
  });
});
