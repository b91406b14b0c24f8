import { describe, expect, test } from 'vitest';
import type { Chord } from '../../src/harmony/analysis.ts';
import { readNotation } from '../../src/notation/index.ts';
import { textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { describeMoment } from '../../web/engrave/describe.ts';
import { type Box, overlap, type SystemGeometry, xAt } from '../../web/engrave/geometry.ts';
import type { MarkedFinding } from '../../web/engrave/input.ts';
import { cadenceWords } from '../../web/engrave/lanes.ts';
import { hitIn } from '../../web/engrave/pointing.ts';
import { clip } from '../../web/engrave/strokes.ts';
import { placeTags } from '../../web/engrave/tags.ts';
import { guessWidth, setChordLabel } from '../../web/engrave/words.ts';

/** Two crotchets in four voices, as an engraved system would report them. */
function twoChords(): SystemGeometry {
  const texture = textureOf(
    readNotation('key: C major\nmetre: 2/4\nS: G4 A4 |\nA: E4 F4 |\nT: C4 D4 |\nB: C3 D3 |\n').score,
  );
  const ys = { S: [25, 20], A: [35, 30], T: [95, 90], B: [130, 125] } as const;
  const heads = (['S', 'A', 'T', 'B'] as const).flatMap((voice) =>
    texture.tones[voice].map((tone, i) => ({
      x: 60 + i * 60,
      y: ys[voice][i]!,
      width: 12,
      height: 10,
      voice,
      at: tone.at,
      until: tone.until,
      tone: tone.id,
      place: 0,
      tip: ys[voice][i]! - 30,
    })),
  );
  return {
    width: 200,
    left: 18,
    right: 180,
    top: { treble: 0, bass: 100 },
    bars: [{ index: 0, number: '1', at: 0, until: 2 * CROTCHET, x: 18, width: 162 }],
    columns: [
      { at: 0, x: 60 },
      { at: CROTCHET, x: 120 },
    ],
    heads,
    gaps: [],
    solid: heads,
    thin: [],
    highest: -10,
    lowest: 150,
  };
}

function finding(label: string, voices: MarkedFinding['voices'], bare = false): MarkedFinding {
  const texture = textureOf(
    readNotation('key: C major\nmetre: 2/4\nS: G4 A4 |\nA: E4 F4 |\nT: C4 D4 |\nB: C3 D3 |\n').score,
  );
  return {
    id: `parallel-fifths@0:${label}`,
    label,
    severity: 'fault',
    family: 'consecutives',
    voices,
    from: 0,
    until: 2 * CROTCHET,
    tones: bare ? [] : voices.flatMap((voice) => texture.tones[voice]),
  };
}

describe('tags and strokes', () => {
  const geometry = twoChords();

  test('a tag stands above for an upper voice, below for tenor and bass', () => {
    const [above, below] = placeTags([finding('1', ['S', 'B']), finding('2', ['T', 'B'])], geometry, []);
    expect(above!.box.y + above!.box.height).toBeLessThan(0);
    expect(below!.box.y).toBeGreaterThan(140);
    expect(above!.heads.map((head) => head.tone)).toEqual(['S@0', 'B@0', 'S@10080', 'B@10080']);
  });

  test('strokes run along both voices and join them between the two moments', () => {
    const [tag] = placeTags([finding('1', ['S', 'B'])], geometry, []);
    const xs = tag!.strokes.flatMap(([a, b]) => [a.x, b.x]);
    const ys = tag!.strokes.flatMap(([a, b]) => [a.y, b.y]);
    expect(Math.min(...xs)).toBeGreaterThan(72);
    expect(Math.max(...xs)).toBeLessThan(120);
    expect(Math.max(...ys)).toBeGreaterThan(125);
  });

  test('many findings at one place keep off the notes and off each other', () => {
    const many = Array.from({ length: 12 }, (_, i) =>
      finding(String(i + 1), i % 2 ? ['S', 'A'] : ['T', 'B']),
    );
    const tags = placeTags([...many, finding('13', ['S'], true)], geometry, [
      { x: 60, y: -30, width: 30, height: 12 },
    ]);
    expect(tags).toHaveLength(13);
    const boxes: Box[] = [...tags.map(({ box }) => box), { x: 60, y: -30, width: 30, height: 12 }];
    for (const [i, box] of boxes.entries()) {
      for (const head of geometry.heads) expect(overlap(box, head)).toBe(false);
      for (const other of boxes.slice(i + 1)) expect(overlap(box, other)).toBe(false);
    }
  });

  test('a finding without notes has a bracket over its time; one about other systems is left out', () => {
    const [bare] = placeTags([finding('1', ['A'], true)], geometry, []);
    expect(bare!.strokes.length).toBeGreaterThanOrEqual(4);
    const elsewhere = { ...finding('2', ['A'], true), from: 9 * CROTCHET, until: 10 * CROTCHET };
    expect(placeTags([elsewhere], geometry, [])).toEqual([]);
  });

  test('a stroke is broken where a head stands', () => {
    const pieces = clip(
      [
        { x: 0, y: 0 },
        { x: 100, y: 0 },
      ],
      [{ x: 40, y: -5, width: 20, height: 10 }],
    );
    expect(pieces).toEqual([
      [
        { x: 0, y: 0 },
        { x: 40, y: 0 },
      ],
      [
        { x: 60, y: 0 },
        { x: 100, y: 0 },
      ],
    ]);
    expect(
      clip(
        [
          { x: 45, y: 0 },
          { x: 50, y: 0 },
        ],
        [{ x: 40, y: -5, width: 20, height: 10 }],
      ),
    ).toEqual([]);
  });
});

describe('pointing', () => {
  const geometry = twoChords();

  test('a point between columns belongs to the one before, and has its own moment', () => {
    const hit = hitIn(geometry, [], 90, 20)!;
    expect(hit).toMatchObject({ staff: 'treble', at: 0, place: 34 });
    expect(hit.moment).toBe(CROTCHET / 2);
    expect(hit.tone).toBeUndefined();
    expect(xAt(geometry, hit.moment)).toBeCloseTo(90, 0);
  });

  test('a head is hit before the space around it, and tells its voice', () => {
    expect(hitIn(geometry, [], 66, 40)).toMatchObject({ voice: 'A', tone: 'A@0' });
    expect(hitIn(geometry, [], 126, 128)).toMatchObject({ voice: 'B', tone: 'B@10080', staff: 'bass' });
    expect(hitIn(geometry, [], 300, 20)).toBeUndefined();
  });
});

const V65: Chord = {
  index: 0,
  at: 0,
  until: CROTCHET,
  key: { tonic: { step: 'E', alteration: 0 }, mode: 'minor' },
  roman: { degree: 5, alteration: 0, quality: 'major', seventh: 'minor', inversion: 1 },
  root: { step: 'B', alteration: 0 },
  bass: { step: 'D', alteration: 1 },
  quality: 'major',
  members: {
    root: { step: 'B', alteration: 0 },
    third: { step: 'D', alteration: 1 },
    fifth: { step: 'F', alteration: 1 },
    seventh: { step: 'A', alteration: 0 },
  },
  sure: 1,
};

describe('words', () => {
  const texts = (label: string) => setChordLabel(label, guessWidth).runs.map(({ text }) => text);

  test('numerals are set with their figures apart', () => {
    expect(texts('V65')).toEqual(['V', '6', '5']);
    expect(texts('viio7/V')).toEqual(['vii', '°', '7', '/', 'V']);
    expect(texts('iib')).toEqual(['ii', 'b']);
    expect(texts('Ger65')).toEqual(['Ger', '6', '5']);
    expect(texts('bVI')).toEqual(['\ue260', 'VI']);
    expect(texts('nothing known')).toEqual(['nothing known']);
  });

  test('figured bass as figures one above the other, each with its sign', () => {
    expect(texts('65')).toEqual(['6', '5']);
    expect(texts('4n3')).toEqual(['4', '\ue261', '3']);
    expect(texts('b6#')).toEqual(['\ue260', '6', '\ue262']);
  });

  test('cadences by name', () => {
    expect(cadenceWords({ kind: 'imperfect', phrygian: true, tierce: false })).toBe('phrygian');
    expect(cadenceWords({ kind: 'perfect', phrygian: false, tierce: true })).toBe('perfect (tierce)');
  });

  test('a moment in words', () => {
    const { score } = readNotation(
      'key: E minor\nmetre: 2/4\nS: F#5 G5 |\nA: B4 r |\nT: A4*2 |\nB: D#3 ? |\n',
    );
    const texture = textureOf(score);
    const told =
      'Bar 1, beat 1: soprano F♯5, alto B4, tenor A4, bass D♯3. Chord V65 in E minor: B major with a seventh, first inversion.';
    expect(describeMoment(texture, { chords: [V65], seconds: [] }, 0)).toBe(told);
    const second = {
      from: 0,
      until: CROTCHET,
      key: { tonic: { step: 'B', alteration: 0 }, mode: 'minor' },
    } as const;
    const roman = { degree: 1, alteration: 0, quality: 'major', seventh: 'minor', inversion: 1 } as const;
    const seconds = [{ ...second, chords: [{ index: 0, roman }] }];
    expect(describeMoment(texture, { chords: [V65], seconds }, 0)).toBe(`${told} Or I65 in B minor.`);
    expect(describeMoment(texture, { chords: [V65], seconds: [] }, CROTCHET)).toBe(
      'Bar 1, beat 2: soprano G5, alto rest, tenor A4 held, bass not written.',
    );
    expect(describeMoment(texture, { chords: [], seconds: [] }, 9 * CROTCHET)).toBe('');
  });
});
