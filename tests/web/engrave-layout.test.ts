import { describe, expect, test } from 'vitest';
import { readNotation } from '../../src/notation/index.ts';
import { parsePitch } from '../../src/score/pitch.ts';
import { VOICES } from '../../src/score/score.ts';
import { signatureAlteration } from '../../src/score/signature.ts';
import { CROTCHET, type Metre } from '../../src/score/time.ts';
import { accidentalsInBar } from '../../web/engrave/accidentals.ts';
import { placeY, staffDistance } from '../../web/engrave/extents.ts';
import { planBars } from '../../web/engrave/plan.ts';
import { breakSystems, idealSpace, type SpacedBar, spaceSystem } from '../../web/engrave/spacing.ts';
import { arrangeSystems } from '../../web/engrave/systems.ts';
import { findTuplets, noteValues, restValues, valueLength } from '../../web/engrave/values.ts';
import { SCORES } from '../browser/engrave-harness/scores.ts';

const COMMON: Metre = { beats: 4, unit: 4 };
const SIX_EIGHT: Metre = { beats: 6, unit: 8 };
const THREE_FOUR: Metre = { beats: 3, unit: 4 };
/** Values as `4.` for a dotted crotchet. */
const written = (pieces: readonly { value: { base: number; dots: number } }[]) =>
  pieces.map(({ value }) => `${value.base}${'.'.repeat(value.dots)}`);
const plan = (text: string) => planBars(readNotation(text).score);

describe('written values', () => {
  test.each([
    ['a dotted minim on beat 2', 1, 3, COMMON, ['2.']],
    ['five crotchets cut at the half bar', 0, 5, { beats: 6, unit: 4 }, ['2.', '2']],
    ['two and a half beats', 0, 2.5, COMMON, ['2', '8']],
    ['two and a half beats off the beat', 0.5, 2.5, COMMON, ['4.', '4']],
    ['five quavers in 6/8', 0, 2.5, SIX_EIGHT, ['4.', '4']],
    ['a minim across the beat of 6/8', 1, 2, SIX_EIGHT, ['8', '4.']],
    ['a double dot', 0, 3.5, COMMON, ['2..']],
    ['five semiquavers', 0, 1.25, COMMON, ['4', '16']],
  ] as const)('%s', (_name, at, beats, metre, expected) => {
    const pieces = noteValues(at * CROTCHET, beats * CROTCHET, metre);
    expect(written(pieces)).toEqual(expected);
    expect(pieces.reduce((sum, { duration }) => sum + duration, 0)).toBe(beats * CROTCHET);
    for (const piece of pieces) expect(valueLength(piece.value)).toBe(piece.duration);
  });

  test.each([
    ['two beats at the beginning of a bar', 0, 2, COMMON, ['2']],
    ['two beats in the middle are two rests', 1, 2, COMMON, ['4', '4']],
    ['three beats', 1, 3, COMMON, ['4', '2']],
    ['no minim rest in 3/4', 0, 2, THREE_FOUR, ['4', '4']],
    ['a beat of 6/8', 0, 1.5, SIX_EIGHT, ['4.']],
    ['half a beat, then one', 0.5, 1.5, COMMON, ['8', '4']],
  ] as const)('rests: %s', (_name, at, beats, metre, expected) => {
    expect(written(restValues(at * CROTCHET, beats * CROTCHET, metre))).toEqual(expected);
  });

  test('tuplets are found where dots and ties cannot write a length', () => {
    const third = CROTCHET / 3;
    const fifth = CROTCHET / 5;
    const spans = findTuplets([
      CROTCHET,
      third,
      third,
      third,
      CROTCHET,
      third * 2,
      third,
      ...Array(5).fill(fifth),
    ]);
    expect(spans).toEqual([
      { first: 1, last: 3, ratio: { count: 3, inTimeOf: 2 } },
      { first: 5, last: 6, ratio: { count: 3, inTimeOf: 2 } },
      { first: 7, last: 11, ratio: { count: 5, inTimeOf: 4 } },
    ]);
    expect(findTuplets([CROTCHET, CROTCHET / 2, CROTCHET / 4])).toEqual([]);
  });
});

describe('accidentals', () => {
  const bar = (names: string, fifths: number, before = new Map()) =>
    accidentalsInBar(
      names.split(' ').map((name, i) => ({
        at: i * CROTCHET,
        pitch: parsePitch(name.replace('~', ''))!,
        continued: name.startsWith('~'),
      })),
      fifths,
      before,
    );
  const marks = (names: string, fifths: number, before = new Map()) =>
    bar(names, fifths, before)
      .needs.map((need) => (need === 'needed' ? '!' : need === 'courtesy' ? '?' : '-'))
      .join('');

  test.each([
    ['what the signature says needs none', 'F#4 C4 Bb4', 1, '--!'],
    ['an accidental holds for its place until the barline', 'C#4 D4 C#4', 0, '!--'],
    ['and must be taken back', 'C#4 C4 C#4', 0, '!!!'],
    ['another octave has its own', 'C#4 C#5', 0, '!!'],
    ['another octave is reminded', 'C#4 C5', 0, '!?'],
    ['a note tied over the barline needs none', '~C#4 D4', 0, '--'],
    ['but it does not hold for a later note', '~C#4 C#4', 0, '-!'],
    ['and a later natural is reminded', '~C#4 C4', 0, '-?'],
    ['flats', 'Bb4 B4 Bb4', -2, '-!!'],
  ] as const)('%s', (_name, notes, fifths, expected) => {
    expect(marks(notes, fifths)).toBe(expected);
  });

  test('the next bar reminds once of what this bar altered', () => {
    const { reminders } = bar('C#5 D5', 0);
    expect(marks('C5 C4 C5', 0, reminders as Map<never, never>)).toBe('?--');
    expect(marks('C#5', 0, reminders as Map<never, never>)).toBe('!');
    // What keeps to its signature is no news to the next bar.
    expect(bar('F#5 C5', 1).reminders.size).toBe(0);
  });

  test('signatures', () => {
    expect(signatureAlteration(2, 'C')).toBe(1);
    expect(signatureAlteration(1, 'C')).toBe(0);
    expect(signatureAlteration(-3, 'A')).toBe(-1);
    expect(signatureAlteration(-2, 'A')).toBe(0);
    expect(signatureAlteration(0, 'F')).toBe(0);
  });
});

describe('bars as written signs', () => {
  test('a sound held over the barline is two signs, tied, of one tone', () => {
    const [first, second] = plan(SCORES.ties!);
    expect(first!.signs.S.at(-1)).toMatchObject({ tied: true, tone: 'S@30240' });
    expect(second!.signs.S[0]).toMatchObject({ continued: true, tone: 'S@30240' });
    expect(second!.signs.S[0]!.tied).toBeUndefined();
  });

  test('signs fill every bar of every voice exactly', () => {
    for (const text of Object.values(SCORES)) {
      for (const bar of plan(text)) {
        for (const voice of VOICES) {
          const sum = bar.signs[voice].reduce((total, sign) => total + sign.duration, 0);
          expect(sum, `bar ${bar.number}, ${voice}`).toBe(bar.duration);
        }
      }
    }
  });

  test('quavers are beamed within the beat, and never over a rest or longer note', () => {
    const [bar] = plan('key: C major\nmetre: 4/4\nS: (C5 D5) (E5 F5) (G5 r) (C5 D5 E5 F5) |\n');
    expect(bar!.beams.S).toEqual([
      [0, 1],
      [2, 3],
      [6, 9],
    ]);
    const [six] = plan('key: C major\nmetre: 6/8\nS: C5 D5 E5 F5 G5*2 |\n');
    expect(six!.beams.S).toEqual([[0, 2]]);
  });

  test('rests keep clear of the other voice, and two alike are drawn as one in the middle', () => {
    const [bar] = plan('key: C major\nmetre: 4/4\nS: A4 r r r |\nA: F4 E5 r C4 |\n');
    const [, high, twin, free] = bar!.signs.S;
    expect(high!.place).toBeGreaterThanOrEqual(37 + 4);
    expect(twin).toMatchObject({ place: 34 });
    expect(twin!.shared).toBeUndefined();
    expect(bar!.signs.A[2]).toMatchObject({ place: 34, shared: true });
    expect(free!.place).toBe(36);
  });

  test('gaps that follow each other are one, and give the bar a column for each beat', () => {
    const bars = plan(SCORES.unfinished!);
    const alto = bars[3]!.signs.A;
    expect(alto).toHaveLength(1);
    expect(alto[0]).toMatchObject({ kind: 'gap', duration: 3 * CROTCHET });
    const empty = plan('key: C major\nmetre: 4/4\nS: ? ? ? ? |\n')[0]!;
    expect(empty.columns).toEqual([0, 1, 2, 3].map((beat) => beat * CROTCHET));
  });

  test('changes of key and metre, repeats and the final bar', () => {
    const bars = plan(SCORES.repeats!);
    expect(bars[0]).toMatchObject({ repeatStart: true });
    expect(bars[1]).toMatchObject({ repeatEnd: true });
    expect(bars[2]).toMatchObject({ keyBefore: 1, metreChanges: true });
    expect(bars[3]!.keyBefore).toBeUndefined();
    expect(bars.at(-1)).toMatchObject({ final: true });
  });

  test('a tuplet keeps its exact lengths under written values', () => {
    const bar = plan(SCORES.repeats!)[4]!;
    expect(bar.tuplets).toEqual([{ voice: 'S', first: 0, last: 2, ratio: { count: 3, inTimeOf: 2 } }]);
    expect(bar.signs.S[1]).toMatchObject({ duration: CROTCHET / 3, value: { base: 8, dots: 0 } });
  });
});

describe('heights', () => {
  test('staff places', () => {
    expect(placeY('treble', 38)).toBe(0);
    expect(placeY('treble', 30)).toBe(40);
    expect(placeY('bass', 18)).toBe(40);
  });

  test('the staves move apart for what hangs between them', () => {
    const [plain] = plan('key: C major\nmetre: 1/4\nS: C5 |\nA: A4 |\nT: C3 |\nB: C3 |\n');
    const [deep] = plan('key: C major\nmetre: 1/4\nS: C5 |\nA: G3 |\nT: G4 |\nB: C3 |\n');
    expect(staffDistance([deep!], 0)).toBeGreaterThan(staffDistance([plain!], 0) + 20);
    expect(staffDistance([plain!], 5)).toBe(staffDistance([plain!], 4) + 14);
  });
});

describe('spacing', () => {
  const column = (at: number, duration: number, more: object = {}) => ({
    at,
    duration,
    left: 0,
    right: 12,
    labels: [],
    ...more,
  });
  const bar = (...columns: ReturnType<typeof column>[]): SpacedBar => ({ head: 14, columns });

  test('a longer value has more room, by less than its length', () => {
    expect(idealSpace(2 * CROTCHET)).toBeGreaterThan(idealSpace(CROTCHET));
    expect(idealSpace(2 * CROTCHET)).toBeLessThan(2 * idealSpace(CROTCHET));
  });

  test('a system fills its width exactly, in order, with like values set alike', () => {
    const four = () => bar(...[0, 1, 2, 3].map((i) => column(i * CROTCHET, CROTCHET)));
    const { bars, width } = spaceSystem([four(), four()], 600);
    expect(width).toBeCloseTo(600, 0);
    const xs = bars.flatMap(({ columns }) => columns);
    expect([...xs].sort((a, b) => a - b)).toEqual(xs);
    const gaps = bars.flatMap(({ columns }) => columns.slice(1).map((x, i) => x - columns[i]!));
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0]!, 0);
  });

  test('room for accidentals and labels is never given up, however narrow', () => {
    const label = [{ lane: 'numerals', left: 20, right: 32 }];
    const { bars, width } = spaceSystem(
      [bar(column(0, CROTCHET, { labels: label }), column(CROTCHET, CROTCHET, { left: 22, labels: label }))],
      40,
    );
    const [first, second] = bars[0]!.columns;
    expect(second! - first!).toBeGreaterThanOrEqual(12 + 22);
    expect(second! - 20).toBeGreaterThan(first! + 32);
    expect(width).toBeGreaterThan(40);
  });

  test('a ragged system is not drawn out', () => {
    const { width } = spaceSystem([bar(column(0, CROTCHET))], 1000, 1.5);
    expect(width).toBeLessThan(120);
  });

  test('bars are broken evenly, and sooner after a phrase than inside one', () => {
    const bars = (closes: readonly number[]) =>
      Array.from({ length: 9 }, (_, i) => ({ least: 60, natural: 100, closes: closes.includes(i) }));
    expect(breakSystems(bars([]), 400, 60)).toEqual([0, 3, 6]);
    expect(breakSystems(bars([3]), 460, 60)[1]).toBe(4);
    // One bar too wide for the page still gets a system.
    expect(breakSystems([{ least: 900, natural: 1200, closes: true }], 400, 60)).toEqual([0]);
    expect(breakSystems([], 400, 60)).toEqual([]);
  });

  test('breaks stay where they were while they fit and are hardly worse', () => {
    const bars = (wide: number, length = 9) =>
      Array.from({ length }, (_, i) => ({ least: 60, natural: i === 1 ? wide : 100, closes: false }));
    const before = breakSystems(bars(100), 400, 60);
    expect(breakSystems(bars(120), 400, 60, before)).toBe(before);
    expect(breakSystems(bars(390), 400, 60, before)).not.toEqual(before);
    // Breaks of a longer or a shorter piece.
    expect(breakSystems(bars(100, 4), 400, 60, before)).toEqual(breakSystems(bars(100, 4), 400, 60));
    expect(breakSystems(bars(100, 30), 400, 60, before)).toEqual(breakSystems(bars(100, 30), 400, 60));
    expect(breakSystems([], 400, 60, before)).toEqual([]);
    expect(breakSystems(bars(100), 400, 60, [])).toEqual(before);
  });

  test('every bar of a score stands on one system, at any width', () => {
    for (const width of [200, 460, 1280, 3000]) {
      const bars = plan(SCORES.flats!);
      const systems = arrangeSystems(bars, { width, labels: () => [], lyrics: 0 });
      expect(systems.flatMap((system) => system.bars)).toEqual(bars);
    }
  });

  test('a system that begins with an altered note tied over tells its accidental again', () => {
    const bars = plan('key: C major\nmetre: 1/1\nS: F#4 | = | F4 |\nA: D4 | = | D4 |\n');
    const one = arrangeSystems(bars, { width: 2000, labels: () => [], lyrics: 0 });
    const three = arrangeSystems(bars, { width: 60, labels: () => [], lyrics: 0 });
    expect(one).toHaveLength(1);
    expect(one[0]!.bars[1]!.signs.S[0]!.accidental).toBeUndefined();
    expect(three).toHaveLength(3);
    expect(three[1]!.bars[0]!.signs.S[0]!.accidental).toBe('courtesy');
    expect(three[1]!.bars[0]!.signs.A[0]!.accidental).toBeUndefined();
  });

  test('equal music gives equal plans, so that nothing is drawn twice', () => {
    const arrange = () => arrangeSystems(plan(SCORES.dotted!), { width: 800, labels: () => [], lyrics: 0 });
    expect(JSON.stringify(arrange())).toBe(JSON.stringify(arrange()));
  });
});
