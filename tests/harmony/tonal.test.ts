/**
 * The tonal library as an outside check: what it detects in the sounding notes of a chord includes the chord we name.
 * Where it cannot, the reason is one of a few kinds.
 */
import { Chord as TonalChord } from 'tonal';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import type { Analysis, Chord } from '../../src/harmony/analysis.ts';
import { CHORD_TYPES } from '../../src/harmony/chord-types.ts';
import { memberOf, membersOf } from '../../src/harmony/questions/members.ts';
import { voicings } from '../../src/harmony/questions/voicing.ts';
import { romanNumeral } from '../../src/harmony/tonal.ts';
import { fifthsPlace, type NoteName, parseNoteName, printNoteName } from '../../src/score/pitch.ts';
import { VOICES } from '../../src/score/score.ts';
import { textureOf, toneIn } from '../../src/score/texture.ts';
import { corpusIsThere, readPieces } from '../bench/rules/corpus.ts';
import { sampled } from '../support/sampled.ts';

/** Why the library does not name a chord as we do, though the notes are these. */
const KINDS = [
  'an augmented sixth, which it takes for the dominant seventh that sounds the same',
  'a chord without its third or its root',
  'fewer than three notes',
  'a seventh chord without the diminished or augmented fifth that tells it from a plainer one',
] as const;
type Kind = (typeof KINDS)[number];

/** The chord's own notes that sound in it, the lowest first: without what the reading takes for ornaments. */
function soundingMembers(analysis: Analysis, chord: Chord): NoteName[] {
  const sung = voicings(analysis)[chord.index]!.slices.flatMap((slice) =>
    VOICES.toReversed().flatMap((voice) => {
      const tone = toneIn(slice, voice);
      return tone !== undefined && memberOf(chord, tone.pitch) !== undefined ? [tone.pitch] : [];
    }),
  );
  return sung.filter((note, i) => sung.findIndex((other) => fifthsPlace(other) === fifthsPlace(note)) === i);
}

const asked = new Map<string, boolean>();

/** The library is asked once about the same notes. */
function isDetected(notes: readonly NoteName[], chord: Chord): boolean {
  const id = [...notes, ...membersOf(chord)].map(printNoteName).join(' ');
  const answer = asked.get(id) ?? detects(notes, chord);
  asked.set(id, answer);
  return answer;
}

function detects(notes: readonly NoteName[], chord: Chord): boolean {
  const ours = new Set(membersOf(chord).map(fifthsPlace));
  return TonalChord.detect(notes.map(printNoteName), { assumePerfectFifth: true }).some((symbol) => {
    const { tonic, notes: found } = TonalChord.get(symbol);
    const root = parseNoteName(tonic ?? '');
    if (root === undefined || fifthsPlace(root) !== fifthsPlace(chord.root)) return false;
    const places = found.flatMap((name) => parseNoteName(name) ?? []).map(fifthsPlace);
    return places.length === ours.size && places.every((place) => ours.has(place));
  });
}

function kindOf(notes: readonly NoteName[], chord: Chord): Kind | undefined {
  if (chord.roman.special !== undefined && chord.roman.special !== 'Neapolitan') return KINDS[0];
  const members = new Set(notes.map((note) => memberOf(chord, note)));
  if (!members.has('root') || !members.has('third')) return KINDS[1];
  if (notes.length < 3) return KINDS[2];
  const plain = chord.quality === 'major' || chord.quality === 'minor';
  return !plain && !members.has('fifth') ? KINDS[3] : undefined;
}

describe('the tonal library', () => {
  it('gives our kinds of chord their members', () => {
    const offsets = Object.fromEntries(CHORD_TYPES.map(({ name, offsets: own }) => [name, own]));
    expect(offsets).toMatchObject({ M: [0, 4, 1], o: [0, -3, -6], M7: [0, 4, 1, -2], '+maj7': [0, 4, 8, 5] });
  });

  it('gives degrees their numerals', () => {
    expect([1, 2, 3, 4, 5, 6, 7].map((degree) => romanNumeral(degree as 1, 0, true))).toEqual([
      'I',
      'II',
      'III',
      'IV',
      'V',
      'VI',
      'VII',
    ]);
    expect(romanNumeral(7, -1, true)).toBe('bVII');
    expect(romanNumeral(4, 1, false)).toBe('#iv');
  });
});

describe.skipIf(!corpusIsThere())('on the open chorales (skipped without ../shared/corpus)', () => {
  it('detects in the sounding notes the chord that we name', { timeout: 60_000 }, () => {
    let [chords, agreed] = [0, 0];
    const excepted = new Map<Kind, number>();
    const unexplained: string[] = [];
    for (const { number, score } of sampled(readPieces(), 3)) {
      const analysis = analyse(textureOf(score));
      for (const chord of analysis.chords) {
        const notes = soundingMembers(analysis, chord);
        chords++;
        const known = isDetected(notes, chord);
        const kind = known ? undefined : kindOf(notes, chord);
        if (kind !== undefined) excepted.set(kind, (excepted.get(kind) ?? 0) + 1);
        else if (known) agreed++;
        else
          unexplained.push(
            `${number}: ${printNoteName(chord.root)} ${chord.quality} of ${notes.map(printNoteName).join(' ')}`,
          );
      }
    }
    expect(unexplained).toEqual([]);
    expect(agreed / chords).toBeGreaterThan(0.9);
    for (const kind of excepted.keys()) expect(KINDS).toContain(kind);
  });
});
