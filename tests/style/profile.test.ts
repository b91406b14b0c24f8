import { describe, expect, test } from 'vitest';
import { MEASURES } from '../../src/style/list.ts';
import { placed, styleOf } from '../../src/style/profile.ts';
import { LONG, QUANTILES, SHORT } from '../../src/style/profile-data.ts';
import { adviceOn, placeInWords, tooShortInWords } from '../../src/style/words.ts';
import { analyseText } from '../harmony/reading.ts';
import { BLOCK_CHORDS } from '../support/block-chords.ts';

describe('the profile', () => {
  test('block chords lie below the model in movement and ornaments, and are told so', () => {
    const style = styleOf(analyseText(BLOCK_CHORDS));
    if (style.kind !== 'told') throw new Error('too short');
    const low = style.values.filter(({ outside }) => outside === 'low').map(({ measure }) => measure.id);
    expect(low).toEqual(expect.arrayContaining(['movement-below-tune', 'off-beat-tenor', 'ornaments']));
    const movement = style.values.find(({ measure }) => measure.id === 'movement-below-tune')!;
    expect(placeInWords(movement)).toMatch(
      /^0 % of beats; in nine chorales of ten it is between \d+ and \d+\.$/,
    );
    expect(adviceOn(movement)).toBe(movement.measure.low);
  });

  test('twenty-three beats are too short to tell', () => {
    const style = styleOf(analyseText(BLOCK_CHORDS.split('\n').slice(0, 9).join('\n')));
    expect(style).toEqual({ kind: 'too short', beats: 16, needed: 24 });
    if (style.kind === 'too short')
      expect(tooShortInWords(style)).toMatch(/^Too short to tell: 16 beats are/);
  });

  test.each(MEASURES)('$id has its spread, in rising order', ({ id }) => {
    for (const table of [LONG, SHORT]) {
      expect(table[id]).toHaveLength(QUANTILES.length);
      expect(table[id]).toEqual([...table[id]!].sort((a, b) => a - b));
    }
  });

  test('a value is placed by straight lines between quantiles, and equal quantiles by their middle', () => {
    const quantiles = QUANTILES.map((percent) => Math.max(0, percent - 10));
    const at = (value: number) => placed(MEASURES[0]!, value, [], quantiles);
    expect(at(42).percentile).toBe(52);
    expect(at(0).percentile).toBe(5);
    expect(at(-1)).toMatchObject({ percentile: 0, outside: 'low' });
    expect(at(91)).toMatchObject({ percentile: 100, outside: 'high' });
    expect(at(85)).not.toHaveProperty('outside');
  });
});

describe('room', async () => {
  const { findRoom, roomWanted } = await import('../../src/style/room.ts');
  const { roomInWords } = await import('../../src/style/room-words.ts');
  const { reviewScore } = await import('../../src/review/review.ts');
  const { profileNamed } = await import('../../src/profiles/list.ts');
  const { readNotation } = await import('../../src/notation/index.ts');
  const review = reviewScore(readNotation(BLOCK_CHORDS).score, profileNamed('chorale')!);

  test('block chords have some, never in the tune, at most three in eight bars', () => {
    const wanted = roomWanted(styleOf(review.analysis));
    expect(wanted).toContain('passing note');
    const rooms = findRoom(review, wanted);
    expect(rooms.length).toBeGreaterThan(0);
    for (const kind of wanted)
      expect(rooms.filter((room) => room.kind === kind).length).toBeLessThanOrEqual(3);
    for (const room of rooms) {
      expect(room.voice).not.toBe('S');
      expect(roomInWords(room)).not.toMatch(/\b[A-G][♯♭#b]?\d/);
    }
  });

  test('locked voices are left alone', () => {
    expect(findRoom(review, ['passing note'], ['S', 'A', 'T', 'B'])).toEqual([]);
  });
});
