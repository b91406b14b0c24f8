import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/harmony/analyse.ts';
import { AIMS, aimNamed, aimsFor } from '../../src/practice/aims.ts';
import { mayFollow } from '../../src/practice/chords.ts';
import { MOST_EXERCISES, practise } from '../../src/practice/practice.ts';
import { chance } from '../../src/practice/random.ts';
import type { PracticeKey, Sung } from '../../src/practice/scale.ts';
import { ENOUGH_ANSWERS, prove, scoreOf } from '../../src/practice/search.ts';
import { tuneFor } from '../../src/practice/tune.ts';
import { mayMove, type Voicing, voicingsOf } from '../../src/practice/voicings.ts';
import { CHORALE } from '../../src/profiles/profile.ts';
import { RULES } from '../../src/rules/list.ts';
import { FAMILIES } from '../../src/rules/rule.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { VOICES } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import { phraseEnds } from '../../src/style/close.ts';
import { precedents } from '../../src/style/precedents.ts';

function made(id: string, seed: number, number = 2) {
  const read = practise({ aims: [aimNamed(id)!], number, seed });
  if (!read.ok) throw new Error(read.message);
  return read.exercises;
}

describe.each(AIMS.map(({ id }) => id))('short exercises for %s', (id) => {
  const exercises = made(id, 11);
  it('have two to four bars, up to four sharps or flats, the tune whole and the first chord given', () => {
    for (const { brief } of exercises) {
      const { bars, voices } = brief.score;
      expect(bars.length).toBeGreaterThanOrEqual(2);
      expect(bars.length).toBeLessThanOrEqual(4);
      expect(Math.abs(bars[0]!.key.fifths)).toBeLessThanOrEqual(4);
      expect(voices.S.every(({ kind }) => kind === 'note')).toBe(true);
      for (const voice of ['A', 'T', 'B'] as const) {
        expect(voices[voice][0]!.kind).toBe('note');
        expect(voices[voice].slice(1).every(({ kind }) => kind === 'gap')).toBe(true);
      }
      expect(brief.task).toMatch(/^complete the alto, tenor and bass/);
    }
  });
  it('close by a pattern of the table', () => {
    for (const { brief } of exercises) {
      const [end] = phraseEnds(analyse(textureOf(brief.score))).slice(-1);
      const known = precedents().some(
        ({ mode, degrees }) =>
          mode === end!.tune.mode && end!.tune.degrees.join(' ').endsWith(degrees.slice(-3).join(' ')),
      );
      expect(known).toBe(true);
    }
  });
  it('have at least twenty answers without fault or query', () => {
    for (const { proof } of exercises) {
      expect(proof.answers).toBeGreaterThanOrEqual(ENOUGH_ANSWERS);
      expect(proof.tried).toBeGreaterThanOrEqual(proof.answers);
    }
  });
});

describe('a seed', () => {
  it('makes the same exercises again, and another seed others', () => {
    const tunes = (seed: number): string =>
      JSON.stringify(made('close', seed).map(({ brief }) => brief.score.voices));
    expect(tunes(31)).toBe(tunes(31));
    expect(new Set([31, 32, 33, 34].map(tunes)).size).toBe(4);
  });
  it('brings no tune twice', () => {
    const read = practise({ aims: AIMS, number: MOST_EXERCISES, seed: 5 });
    if (!read.ok) throw new Error(read.message);
    const tunes = read.exercises.map(({ brief }) => JSON.stringify(brief.score.voices.S));
    expect(new Set(tunes).size).toBe(MOST_EXERCISES);
    expect(read.exercises.map(({ aim }) => aim.id)).toEqual(AIMS.map(({ id }) => id));
  });
});

describe('chance', () => {
  it('is even enough, and shuffles without loss', () => {
    const by = chance(3);
    const counts = [0, 0, 0, 0, 0];
    for (let i = 0; i < 5_000; i++) counts[by.next(5)]!++;
    for (const count of counts) expect(Math.abs(count - 1_000)).toBeLessThan(150);
    expect(by.shuffled([1, 2, 3, 3]).sort()).toEqual([1, 2, 3, 3]);
  });
});

describe('the proof', () => {
  it('gives up where nothing leads to the end', () => {
    const by = chance(1);
    let tune = tuneFor(AIMS[0]!, by);
    while (tune === undefined) tune = tuneFor(AIMS[0]!, by);
    // A last note that is no member of the tonic chord can't close on it.
    const last = { ...tune.notes.at(-1)!, degree: 1, place: tune.notes.at(-1)!.place + 1 };
    const broken = { ...tune, notes: [...tune.notes.slice(0, -1), last] };
    expect(prove(broken, AIMS[0]!, CHORALE, by)).toBeUndefined();
  });
});

const C: PracticeKey = { fifths: 0, mode: 'major' };
const note = (degree: number, place: number): Sung => ({ degree, place, raised: false });
const set = (chord: Voicing['chord'], tune: Sung, ...pitches: readonly string[]): Voicing => {
  const found = voicingsOf(C, chord, tune, false).find(
    ({ parts }) => parts.map(({ pitch }) => printPitch(pitch)).join(' ') === pitches.join(' '),
  );
  if (found === undefined) throw new Error(`${chord} ${pitches} is no way of setting it.`);
  return found;
};

describe('ways of setting a chord', () => {
  it('hold the members they need, and never double what leads', () => {
    const ways = voicingsOf(C, 'V7', note(1, 36), false);
    expect(ways.map(({ parts }) => parts.map(({ pitch }) => printPitch(pitch)).join(' ')).sort()).toEqual([
      'D5 B4 F4 G3',
      'D5 F4 B3 G2',
      'D5 F4 B3 G3',
    ]);
    expect(voicingsOf(C, 'V7', note(0, 35), false)).toEqual([]);
  });
  it('may not move in parallel fifths or octaves, nor leave a leading note or a seventh', () => {
    const one = set('IV', note(5, 33), 'A4', 'F4', 'C4', 'F3');
    expect(mayMove(one, set('V', note(6, 34), 'B4', 'G4', 'D4', 'G3'))).toBe(false);
    expect(mayMove(one, set('V', note(4, 32), 'G4', 'D4', 'B3', 'G3'))).toBe(true);
    const seventh = set('V7', note(1, 36), 'D5', 'F4', 'B3', 'G3');
    expect(mayMove(seventh, set('I', note(0, 35), 'C5', 'E4', 'C4', 'C3'))).toBe(true);
    expect(mayMove(seventh, set('I', note(0, 35), 'C5', 'G4', 'E4', 'C3'))).toBe(false);
  });
  it('follow one another as the table of chords says', () => {
    expect(mayFollow('ii', 'V', 'major')).toBe(true);
    expect(mayFollow('ii', 'V', 'minor')).toBe(false);
    expect(mayFollow('V', 'ii', 'major')).toBe(false);
  });
});

describe('aims', () => {
  it('name rules that there are, each with one aim', () => {
    const named = AIMS.flatMap(({ rules }) => rules);
    expect(named.filter((id) => !RULES.some((rule) => rule.id === id))).toEqual([]);
    expect(new Set(named).size).toBe(named.length);
  });
  it('are chosen by what went wrong, in its order', () => {
    const ids = aimsFor([
      { rule: 'doubled-seventh', family: 'chords' },
      { rule: 'parallel-fifths', family: 'consecutives' },
      { rule: 'unresolved-seventh', family: 'chords' },
      { rule: 'unexplained-dissonance', family: 'dissonance' },
    ]).map(({ id }) => id);
    expect(ids).toEqual(['seventh', 'consecutives']);
  });
  it('say honestly which families have none', () => {
    const without = FAMILIES.filter((family) => aimsFor([{ rule: 'any', family }]).length === 0);
    expect(without).toEqual(['dissonance', 'rhythm and notation']);
  });
});

it('a score has as many chords as are given, and gaps under the rest', () => {
  const by = chance(8);
  let tune = tuneFor(AIMS[0]!, by);
  while (tune === undefined) tune = tuneFor(AIMS[0]!, by);
  const score = scoreOf(tune, [], 'None');
  expect(score.title).toBe('None');
  expect(VOICES.map((voice) => score.voices[voice].some(({ kind }) => kind === 'note'))).toEqual([
    true,
    false,
    false,
    false,
  ]);
});
