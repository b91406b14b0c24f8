import { describe, expect, it } from 'vitest';
import { readName } from '../../src/musicxml/names.ts';

describe('part names', () => {
  it.each([
    ['Soprano', 'S'],
    ['Sopran', 'S'],
    ['SOPRANO 1', 'S'],
    ['Soprano I', 'S'],
    ['Discant', 'S'],
    ['Cantus', 'S'],
    ['Сопрано', 'S'],
    ['Alt', 'A'],
    ['Contralto', 'A'],
    ['A.', 'A'],
    ['Ténor', 'T'],
    ['Taille', 'T'],
    ['Baß', 'B'],
    ['Bassus', 'B'],
    ['S/A', 'SA'],
    ['Soprano & Alto', 'SA'],
    ['Tenor, Bass', 'TB'],
    ['Men', 'TB'],
    ['SA', 'SA'],
  ])('%s is %s and nothing else', (name, voices) => {
    expect(readName(name)).toEqual({ voices: [...voices], accompaniment: false, exact: true });
  });

  it.each([
    ['Alto Saxophone', 'A'],
    ['Bass Clarinet', 'B'],
    ['Given melody', 'S'],
  ])('%s speaks of %s, among other things', (name, voices) => {
    expect(readName(name)).toEqual({ voices: [...voices], accompaniment: false, exact: false });
  });

  it.each(['', 'Part 1', 'Part A', 'Staff B', 'Violin', 'Voice', 'toString', '__proto__', '123'])(
    '%s tells nothing',
    (name) => {
      expect(readName(name).voices).toEqual([]);
    },
  );

  it.each(['Piano', 'Organ', 'Orgel', 'Klavierauszug', 'Keyboard reduction'])('%s accompanies', (name) => {
    expect(readName(name)).toEqual({ voices: [], accompaniment: true, exact: false });
  });

  it.each(['Basso continuo', 'Figured bass', 'Bass & Continuo', 'Organ (bass)'])(
    '%s is a bass that accompanies',
    (name) => {
      expect(readName(name)).toEqual({ voices: ['B'], accompaniment: true, exact: false });
    },
  );
});
