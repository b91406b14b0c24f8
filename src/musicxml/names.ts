/** What the name of a part says about it, in the languages that scores are labelled in. */
import type { VoiceName } from '../score/score.ts';

const WORDS: Readonly<Record<VoiceName, readonly string[]>> = {
  S: [
    's',
    'sop',
    'sopr',
    'soprano',
    'sopranos',
    'soprani',
    'sopran',
    'sopraan',
    'sopraano',
    'szopran',
    'discant',
    'diskant',
    'discantus',
    'descant',
    'cantus',
    'canto',
    'superius',
    'dessus',
    'treble',
    'trebles',
    'tiple',
    'melody',
    'melodie',
    'melodia',
    'сопрано',
  ],
  A: [
    'a',
    'alt',
    'alto',
    'altos',
    'alti',
    'altus',
    'altto',
    'contralto',
    'contraltos',
    'contralti',
    'mean',
    'альт',
  ],
  T: ['t', 'ten', 'tenor', 'tenors', 'tenore', 'tenori', 'tenoor', 'teneur', 'taille', 'тенор'],
  B: ['b', 'bass', 'basses', 'basso', 'bassi', 'bassus', 'bas', 'basse', 'bajo', 'baixo', 'basszus', 'бас'],
};
const VOICE_OF: ReadonlyMap<string, VoiceName> = new Map(
  (Object.entries(WORDS) as [VoiceName, readonly string[]][]).flatMap(([voice, words]) =>
    words.map((word): [string, VoiceName] => [word, voice]),
  ),
);
const PAIRS: ReadonlyMap<string, readonly VoiceName[]> = new Map([
  ['sa', ['S', 'A']],
  ['women', ['S', 'A']],
  ['ladies', ['S', 'A']],
  ['frauen', ['S', 'A']],
  ['damen', ['S', 'A']],
  ['femmes', ['S', 'A']],
  ['tb', ['T', 'B']],
  ['men', ['T', 'B']],
  ['manner', ['T', 'B']],
  ['herren', ['T', 'B']],
  ['hommes', ['T', 'B']],
]);
/** Parts that accompany or reduce the voices. */
const ACCOMPANIMENT =
  /\b(piano|pianoforte|klavier\w*|organ|organo|orgel|orgue|harpsichord|cembalo|clavecin|keyboard|accomp\w*|begleitung|continuo|reduction|rehearsal|thoroughbass|generalbass|figured)\b/;

export interface NameReading {
  /** In the order in which the name says them. */
  readonly voices: readonly VoiceName[];
  readonly accompaniment: boolean;
  /** Nothing else is in the name: `Tenor` or `Tenor 1`, not `Tenor drum`. */
  readonly exact: boolean;
}

/**
 * `Sopran` is S, `Tenor / Bass` T and B, `Organ` an accompaniment, `Bass & Continuo` both a bass and an accompaniment,
 * `Part 1` nothing.
 */
export function readName(name: string): NameReading {
  const plain = name.toLowerCase().replace(/ß/g, 'ss').normalize('NFD').replace(/\p{M}/gu, '');
  const accompaniment = ACCOMPANIMENT.test(plain);
  const words = plain.split(/[^\p{L}]+/u).filter((word) => word !== '' && !/^(i{1,3}|iv)$/.test(word));
  const said = words.map((word) => PAIRS.get(word) ?? voiceOf(word));
  const exact = words.length > 0 && !accompaniment && said.every((voices) => voices.length > 0);
  // A single letter is a voice only among others: "A." is the alto, "Part A" is not.
  const telling = said.filter((_, i) => exact || words[i]!.length > 1).flat();
  return { voices: [...new Set(telling)], accompaniment, exact };
}

function voiceOf(word: string): readonly VoiceName[] {
  const voice = VOICE_OF.get(word);
  return voice === undefined ? [] : [voice];
}
