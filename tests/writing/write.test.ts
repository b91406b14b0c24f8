import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printNotation, readNotation } from '../../src/notation/index.ts';
import { buildScore } from '../../src/score/build.ts';
import { parsePitch, type Step } from '../../src/score/pitch.ts';
import { endOf, type Score, VOICES, type VoiceName } from '../../src/score/score.ts';
import { signatureAlteration } from '../../src/score/signature.ts';
import { textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';
import {
  addBars,
  emptyScore,
  insertBar,
  removeBar,
  withHeading,
  withKey,
  withMetre,
  withTempo,
} from '../../src/writing/bars.ts';
import { draftOf } from '../../src/writing/draft.ts';
import { copyPassage, erasePassage, movePassage, pastePassage } from '../../src/writing/passage.ts';
import { byStep, nearestPitch, pitchAtPlace, spelt } from '../../src/writing/pitches.ts';
import {
  alter,
  type Change,
  moveByOctaves,
  moveBySteps,
  setLength,
  toggleFermata,
  toggleTie,
  write,
} from '../../src/writing/write.ts';

const score = (text: string): Score => readNotation(text).score;
const scoreOf = (change: Change): Score => {
  if (change.kind === 'refused') throw new Error(change.said);
  return change.score;
};
/** One voice of a score in our notation, without its headers. */
const line = (of: Score, voice: VoiceName): string =>
  printNotation(of)
    .split('\n')
    .filter((l) => l.startsWith(`${voice}:`))
    .map((l) => l.slice(2).trim())
    .join(' ');
const beats = (n: number): number => n * CROTCHET;
const note = (name: string) => ({ kind: 'note' as const, pitch: parsePitch(name)! });
const EMPTY = emptyScore({
  title: 'x',
  key: { fifths: 1, mode: 'major' },
  metre: { beats: 4, unit: 4 },
  upbeat: 0,
  bars: 2,
});

describe('writing a note', () => {
  it('fills an open beat and leaves the rest of the bar open', () => {
    expect(line(scoreOf(write(EMPTY, 'A', beats(1), beats(1), note('D4'))), 'A')).toMatch(/^\? D4 \?\*2 \|/);
  });
  it('shortens a note that is cut, and opens what is left behind the new one', () => {
    const before = score('S: C5*4 |');
    expect(line(scoreOf(write(before, 'S', beats(1), beats(1), note('D5'))), 'S')).toBe('C5 D ?*2 ||');
  });
  it('ties a note over the barline', () => {
    const after = scoreOf(write(EMPTY, 'T', beats(3), beats(2), note('G3')));
    expect(line(after, 'T')).toMatch(/\?\*3 G3 \| = \?\*3/);
    expect(after.voices.T.filter((e) => e.kind === 'note').map((e) => e.duration)).toEqual([
      beats(1),
      beats(1),
    ]);
  });
  it('adds a bar where the music runs past the end', () => {
    const after = scoreOf(write(EMPTY, 'S', beats(8), beats(1), note('G4')));
    expect(after.bars.length).toBe(3);
    expect(after.bars[2]!.number).toBe('3');
  });
  it('says where it wrote what', () => {
    expect(write(EMPTY, 'B', beats(5), beats(1), note('F#3')).said).toBe('bar 2, beat 2, bass: F#3');
  });
  it('never changes what it was given', () => {
    const frozen = deepFreeze(score('S: C5 D5 E5 F5 | G5*4 |'));
    write(frozen, 'S', beats(2), beats(3), note('A4'));
  });
});

describe('changing a note', () => {
  const held = score('key: G major\nS: F#4*4 | = G4 A4*2! |');
  it('moves tied notes together by steps of the key', () => {
    expect(line(scoreOf(moveBySteps(held, 'S', beats(4), -1)), 'S')).toBe('E4*4 | = G A*2! ||');
    expect(line(scoreOf(moveBySteps(held, 'S', 0, 6)), 'S')).toMatch(/^E5\*4/);
  });
  it('moves by octaves, and refuses to leave the scale of octaves', () => {
    expect(line(scoreOf(moveByOctaves(held, 'S', 0, 1)), 'S')).toMatch(/^F#5\*4 \| =/);
    expect(moveByOctaves(held, 'S', 0, 9).kind).toBe('refused');
  });
  it('sets sharps and flats, doubles them, and takes them away', () => {
    const once = scoreOf(alter(held, 'S', beats(5), 1));
    expect(line(once, 'S')).toMatch(/= G# A/);
    expect(line(scoreOf(alter(once, 'S', beats(5), 1)), 'S')).toMatch(/= G## A/);
    expect(line(scoreOf(alter(once, 'S', beats(5), 0)), 'S')).toMatch(/= G A/);
  });
  it('ties only to the same pitch, and says why not', () => {
    const two = score('S: C5 C5 D5 E5 |');
    expect(scoreOf(toggleTie(two, 'S', 0, beats(1))).voices.S[0]).toMatchObject({ tied: true });
    expect(toggleTie(two, 'S', beats(1), beats(1)).said).toMatch(/followed by D5/);
  });
  it('writes the second note of a tie where nothing stands yet', () => {
    const after = scoreOf(toggleTie(score('S: C5 ?*3 |'), 'S', 0, beats(1)));
    expect(after.voices.S.slice(0, 2)).toMatchObject([{ tied: true }, { kind: 'note', duration: beats(1) }]);
  });
  it('sets a fermata over the whole chord, then takes it away', () => {
    const chord = score('S: C5 |\nB: C3 |');
    const set = scoreOf(toggleFermata(chord, VOICES, 0));
    expect([set.voices.S[0], set.voices.B[0]]).toMatchObject([{ fermata: true }, { fermata: true }]);
    expect(scoreOf(toggleFermata(set, VOICES, 0)).voices.S[0]).not.toHaveProperty('fermata');
  });
  it('gives a note another length and keeps its fermata', () => {
    const after = scoreOf(setLength(held, 'S', beats(6), beats(1)));
    expect(line(after, 'S')).toBe('F#4*4 | = G A! ? ||');
  });
  it('refuses to change what is not there', () => {
    for (const change of [
      moveBySteps(EMPTY, 'A', 0, 1),
      alter(EMPTY, 'A', 0, 1),
      setLength(EMPTY, 'A', 0, beats(2)),
    ])
      expect(change.kind).toBe('refused');
  });
});

describe('pitches a writer means', () => {
  it('gives a letter its key signature', () => {
    expect(['F', 'C', 'B'].map((s) => signatureAlteration(2, s as Step))).toEqual([1, 1, 0]);
    expect(['B', 'E', 'A'].map((s) => signatureAlteration(-2, s as Step))).toEqual([-1, -1, 0]);
  });
  it('takes the nearest note of a letter', () => {
    const music = score('S: B4 ?*3 |\nB: ?*4 |');
    expect(nearestPitch(music, 'S', beats(1), 'C', { fifths: 0 })).toMatchObject({ step: 'C', octave: 5 });
    expect(nearestPitch(music, 'S', beats(1), 'F', { fifths: 1 })).toMatchObject({
      alteration: 1,
      octave: 4,
    });
    expect(nearestPitch(music, 'B', 0, 'G', { fifths: 0 })).toMatchObject({ step: 'G', octave: 2 });
  });
  it('steps along the scale of the signature', () => {
    expect(byStep(parsePitch('E4')!, 1, { fifths: 1 })).toEqual(parsePitch('F#4'));
    expect(pitchAtPlace(28, { fifths: -7 })).toEqual(parsePitch('Cb4'));
  });
  it.each([
    [66, { fifths: 1, mode: 'major' }, 'F#4'],
    [70, { fifths: -1, mode: 'major' }, 'Bb4'],
    [68, { fifths: 0, mode: 'minor' }, 'G#4'],
    [66, { fifths: -2, mode: 'minor' }, 'F#4'],
    [61, { fifths: 0, mode: 'major' }, 'C#4'],
    [63, { fifths: -1, mode: 'major' }, 'Eb4'],
    [60, { fifths: 7, mode: 'major' }, 'B#3'],
  ] as const)('spells the key %i of a keyboard', (midi, key, name) => {
    expect(spelt(midi, key)).toEqual(parsePitch(name));
  });
});

describe('bars', () => {
  it('begin empty, with an upbeat where asked', () => {
    const begun = emptyScore({
      title: 'New',
      key: { fifths: 0 },
      metre: { beats: 3, unit: 4 },
      upbeat: beats(1),
      bars: 2,
    });
    expect(begun.bars.map((bar) => [bar.number, bar.duration])).toEqual([
      ['0', beats(1)],
      ['1', beats(3)],
      ['2', beats(3)],
    ]);
  });
  it('are added, put in and taken away, and numbered anew', () => {
    const music = score('S: C5*4 | D5*4 | E5*4 |');
    expect(line(insertBar(music, 1), 'S')).toBe('C5*4 | ?*4 | D*4 | E*4 ||');
    expect(removeBar(music, 0).bars.map((bar) => bar.number)).toEqual(['1', '2']);
    expect(endOf(addBars(music, 2))).toBe(beats(20));
    expect(removeBar(score('S: C5*4 |'), 0).bars.length).toBe(1);
  });
  it('take another heading without losing a note', () => {
    const music = score('title: Old\nkey: C major\ntempo: 60\nS: C5 D5 E5 F5 |');
    const after = withHeading(music, { title: 'New', tempo: undefined });
    expect(after.title).toBe('New');
    expect(after).not.toHaveProperty('tempo');
    expect(line(after, 'S')).toBe('C5 D E F ||');
  });
  it('take another key from one of them on, as far as the old one held', () => {
    const music = score('key: C major\nS: C5*4 | D5*4 | E5*4 |\nkey: G major\nS: F#5*4 |');
    const after = withKey(music, 1, { fifths: -1, mode: 'major' });
    expect(after.bars.map((bar) => bar.key.fifths)).toEqual([0, -1, -1, 1]);
    expect(after.voices).toEqual(music.voices);
  });
  it('are barred anew by another metre, notes over a barline tied, the rest open', () => {
    const music = score('upbeat: 2\nS: G4*2 | C5 D5 E5*2 | F5 G5 A5 B5 |\nB: G3*2 | C3*4 | ?*4 |');
    const after = withMetre(music, 0, { beats: 3, unit: 4 });
    if (typeof after === 'string') throw new Error(after);
    expect(line(after, 'S')).toBe('G4*2 | C5 D E | = F G | A B ? ||');
    expect(line(after, 'B')).toBe('G3*2 | C*3 | = ?*2 |');
    const back = withMetre(after, 0, { beats: 4, unit: 4 });
    expect(typeof back === 'string' ? back : textureOf(back).tones.S.map((tone) => tone.pitch)).toEqual(
      textureOf(music).tones.S.map((tone) => tone.pitch),
    );
  });
  it('are whole at the end without the rest where the last gives back the upbeat', () => {
    const music = score('upbeat: 1\nS: G4 | C5 D5 E5*2 | F5 G5 A5 B5 |');
    const after = withMetre(music, 0, { beats: 3, unit: 4 });
    if (typeof after === 'string') throw new Error(after);
    expect(line(after, 'S')).toBe('G4 | C5 D E | = F G | A B ||');
  });
  it('keep each key and tempo that begins inside when they are barred anew', () => {
    const music = score('tempo: 60\nkey: C major\nS: C5*4 |\ntempo: 90\nkey: G major\nS: D5*4 | E5*4 |');
    const after = withMetre(music, 0, { beats: 2, unit: 4 });
    if (typeof after === 'string') throw new Error(after);
    expect(after.bars.map((bar) => [bar.tempo, bar.key.fifths])).toEqual([
      ...Array(2).fill([60, 0]),
      ...Array(4).fill([90, 1]),
    ]);
  });
  it('take another tempo from one of them on, as far as the old one held', () => {
    const music = score('tempo: 60\nS: C5*4 | D5*4 | E5*4 |\ntempo: 90\nS: F5*4 |');
    const tempos = (one: Score) => one.bars.map((bar) => bar.tempo);
    expect(tempos(withTempo(music, 1, 80))).toEqual([60, 80, 80, 90]);
    expect(withTempo(music, 0, 50)).toMatchObject({ tempo: 50, voices: music.voices });
    expect(tempos(withHeading(music, { title: '', tempo: undefined }))).toEqual([
      ...Array(3).fill(undefined),
      90,
    ]);
    expect(tempos(insertBar(music, 3))).toEqual([60, 60, 60, 90, 90]);
    expect(tempos(removeBar(music, 3))).toEqual([60, 60, 60]);
    expect(removeBar(removeBar(removeBar(music, 0), 0), 0).tempo).toBe(90);
    expect(tempos(addBars(music, 1))).toEqual([60, 60, 60, 90, 90]);
  });
  it('refuse another metre over bars that are repeated', () => {
    expect(withMetre(score('S: |: C5*4 :| D5*4 |'), 0, { beats: 3, unit: 4 })).toMatch(/repeated/);
  });
});

describe('a passage', () => {
  const voices = (...names: ('S' | 'A' | 'T' | 'B')[]) => names;
  it('is copied and pasted in another voice, over barlines and with its fermata', () => {
    const music = score('S: C5 D5 E5 F5! | G5*4 |\nA: ?*4 | ?*4 |');
    const passage = copyPassage(music, { from: beats(2), until: beats(4), voices: voices('S') });
    const pasted = pastePassage(music, passage, 'A', beats(3), []);
    if (pasted.kind === 'refused') throw new Error(pasted.said);
    expect(line(pasted.score, 'A')).toBe('?*3 E5 | F! ?*3 ||');
    expect(line(pasted.score, 'S')).toBe(line(music, 'S'));
  });
  it('of several voices goes into its own, but into no locked one', () => {
    const music = score('S: C5*2 D5*2 | ?*4 |\nB: C3 D3 E3 F3 | ?*4 |');
    const passage = copyPassage(music, { from: 0, until: beats(4), voices: voices('S', 'B') });
    const pasted = pastePassage(music, passage, 'A', beats(4), ['S']);
    if (pasted.kind === 'refused') throw new Error(pasted.said);
    expect(line(pasted.score, 'B')).toBe('C3 D E F | C D E F ||');
    expect(line(pasted.score, 'S')).toBe(line(music, 'S'));
    expect(pastePassage(music, passage, 'A', 0, ['S', 'B'])).toMatchObject({ kind: 'refused' });
  });
  it('keeps what is tied as one note', () => {
    const music = score('S: C5*3 D5 | = E5*3 |\nA: ?*4 | ?*4 |');
    const passage = copyPassage(music, { from: 0, until: beats(8), voices: voices('S') });
    expect(passage.lines[0]!.pieces.map((piece) => piece.duration)).toEqual([beats(3), beats(2), beats(3)]);
  });
  it('is erased, and moved by steps and octaves', () => {
    const music = score('S: C5 D5 E5 F5 | G5*4 |\nA: E4*4 | E4*4 |');
    const extent = { from: beats(1), until: beats(3), voices: voices('S', 'A') };
    const moved = movePassage(music, extent, { octaves: -1 });
    const stepped = movePassage(music, { ...extent, voices: voices('S') }, { steps: 2 });
    const erased = erasePassage(music, { ...extent, voices: voices('S') });
    expect([moved, stepped, erased].map((c) => (c.kind === 'changed' ? line(c.score, 'S') : c.said))).toEqual(
      ['C5 D4 E F5 | G*4 ||', 'C5 F G F | G*4 ||', 'C5 ?*2 F | G*4 ||'],
    );
    // The alto's note begins before the stretch and is left alone.
    expect(moved.kind === 'changed' && line(moved.score, 'A')).toBe(line(music, 'A'));
  });
});

describe('a score and its draft', () => {
  const texts = [
    'upbeat: 1\nS: G4 | G4 A4 B4 C5 | D5*3 |\nB: G3 | G3*4 | G3*3 |',
    'metre: 3/2\nS: C5*2 D5 | E5 ?*2 |',
    'S: C5 D5 E5 |\nA: G4*4 |', // a bar that is too short in one voice
    'S: C5 D5 E5 F5 G5 | C5*4 |\nA: E4*4 | E4*4 |', // and one that is too long
    'S: C5*3 | D5*4 |\nA: E4*3 | F4*4 |',
  ];
  it.each(texts)('build the same score again: %s', (text) => {
    const { remarks: _r, ...once } = score(text);
    const { remarks: _s, ...again } = buildScore(draftOf(score(text)));
    expect(again).toEqual(once);
  });
  it('whatever is written where, the voices stay whole', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            voice: fc.constantFrom(...VOICES),
            at: fc.integer({ min: 0, max: 17 }),
            length: fc.constantFrom(1, 2, 3, 4, 6, 8),
            what: fc.constantFrom(
              note('C4'),
              note('F#4'),
              { kind: 'rest' as const },
              { kind: 'gap' as const },
            ),
          }),
          { maxLength: 25 },
        ),
        (changes) => {
          let now = EMPTY;
          for (const { voice, at, length, what } of changes) {
            const change = write(
              now,
              voice,
              Math.min((at * CROTCHET) / 2, endOf(now)),
              (length * CROTCHET) / 2,
              what,
            );
            if (change.kind === 'changed') now = change.score;
          }
          for (const voice of VOICES) {
            let at = 0;
            for (const event of now.voices[voice]) {
              expect(event.at).toBe(at);
              at += event.duration;
            }
            expect(at).toBe(endOf(now));
          }
          expect(now.bars.every((bar) => bar.misfits.length === 0)).toBe(true);
          expect(readNotation(printNotation(now)).score).toEqual({ ...now, remarks: [] });
        },
      ),
      { numRuns: 150 },
    );
  });
});

function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) deepFreeze(part);
  }
  return value;
}
