import { describe, expect, test } from 'vitest';
import { phraseEnds } from '../../src/style/close.ts';
import { closeInWords } from '../../src/style/close-words.ts';
import {
  type Precedent,
  precedents,
  precedentsFor,
  printRow,
  sameClose,
} from '../../src/style/precedents.ts';
import { analyseText } from '../harmony/reading.ts';

const TUNE = 'key: G major\nmetre: 4/4\n\nS: B4 C5 B4 A4 | G4*4! ||\n';
const SET = `${TUNE}A: G4 E4 D4 F#4 | D4*4! ||\nT: D4 C4 D4 C4 | B3*4! ||\nB: G3 A3 B3 D3 | G2*4! ||\n`;

const close = (more: Partial<Precedent>): Precedent => ({
  mode: 'major',
  degrees: ['4', '3', '2', '1'],
  strong: true,
  key: 'I',
  kind: 'perfect',
  chords: 'V–I',
  bass: '5–1',
  suspensions: [],
  chorale: '1',
  bar: '1',
  ...more,
});

describe('phrase ends', () => {
  test('a tune alone has its degrees and nothing of its own', () => {
    const [end] = phraseEnds(analyseText(TUNE));
    expect(end?.tune).toEqual({ mode: 'major', degrees: ['4', '3', '2', '1'], strong: true });
    expect(end).not.toHaveProperty('own');
  });

  test('what is written stands beside it', () => {
    const [end] = phraseEnds(analyseText(SET));
    expect(end?.own).toMatchObject({ key: 'I', kind: 'perfect', chords: 'V7–I', bass: '5–1' });
  });

  test('a tune without a stated mode that ends on the minor tonic is in minor', () => {
    const [end] = phraseEnds(analyseText('metre: 4/4\n\nS: C5 B4 G#4 B4 | A4*4! ||\n'));
    expect(end?.tune).toMatchObject({ mode: 'minor', degrees: ['2', '♯7', '2', '1'] });
  });
});

describe('precedents', () => {
  test('are counted by key and cadence, with their chords, bass and suspensions', () => {
    const many = Array.from({ length: 9 }, (_, i) =>
      close(i < 6 ? {} : { chords: 'V7–I', suspensions: ['4–3'] }),
    );
    const found = precedentsFor(close({}), [...many, close({ kind: 'interrupted', chords: 'V–vi' })]);
    expect(found).toMatchObject({ degrees: ['4', '3', '2', '1'], placed: true, total: 10 });
    expect(found.closes[0]).toMatchObject({
      count: 9,
      chords: [
        { text: 'V–I', count: 6 },
        { text: 'V7–I', count: 3 },
      ],
      suspensions: [{ text: '4–3', count: 3 }],
    });
    expect(found.closes[1]?.kind).toBe('interrupted');
  });

  test('fewer than eight: the place in the bar is let go, then the tune is taken shorter', () => {
    const weak = Array.from({ length: 8 }, () => close({ strong: false }));
    expect(precedentsFor(close({}), weak)).toMatchObject({
      placed: false,
      total: 8,
      degrees: ['4', '3', '2', '1'],
    });
    const others = Array.from({ length: 8 }, () => close({ degrees: ['2', '3', '2', '1'] }));
    expect(precedentsFor(close({}), others)).toMatchObject({
      degrees: ['3', '2', '1'],
      placed: true,
      total: 8,
    });
    expect(precedentsFor(close({ mode: 'minor' }), others).total).toBe(0);
  });

  test('the table is read as it was written, and knows the commonest close', () => {
    const all = precedents();
    expect(all.length).toBeGreaterThan(1000);
    const rows = all.map(printRow);
    expect(rows.every((row) => row.split('|').length === 10)).toBe(true);
    expect(all.every(({ chorale, degrees }) => /^\d+$/.test(chorale) && degrees.length >= 2)).toBe(true);
    const found = precedentsFor({ mode: 'major', degrees: ['3', '2', '1'], strong: true });
    expect(sameClose(found.closes[0]!, { key: 'I', kind: 'perfect' })).toBe(true);
  });

  test('told in words', () => {
    expect(closeInWords({ key: 'I', kind: 'perfect' })).toBe('perfect cadence in the home key');
    expect(closeInWords({ key: 'V', kind: 'imperfect' })).toBe('imperfect cadence in the key of V');
  });
});
