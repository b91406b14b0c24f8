/** Reads the harmony of a texture: phrases, keys, chords, ornaments and cadences. */
import { noteNameAtFifths } from '../score/pitch.ts';
import { type Texture, withPhraseEnds } from '../score/texture.ts';
import type { Analysis, Chord, Key, KeyRegion, Phrase } from './analysis.ts';
import { CHORD_TYPES, membersAt } from './chord-types.ts';
import { sameKey } from './key.ts';
import { cadencesOf } from './reading/cadences.ts';
import { readHarmonies } from './reading/harmonies.ts';
import type { Harmony } from './reading/harmony.ts';
import { ornamentsOf } from './reading/ornaments.ts';
import type { PhraseWeights } from './reading/phrase-search.ts';
import { phrasesOf } from './reading/phrases.ts';
import { respell } from './reading/respelling.ts';
import { romanOf } from './reading/roman.ts';
import { sixFourKind } from './reading/six-four.ts';

/**
 * Reads the harmony of a texture. Pure, and never throws: what is too thin to be read (fewer than two voices
 * sounding) is left without a chord.
 *
 * @param weights what the reading weighs by; the committed table unless a bench has learnt another
 * @param phraseWeights what phrase ends are weighed by where none is marked; likewise
 */
export function analyse(written: Texture, weights?: Float64Array, phraseWeights?: PhraseWeights): Analysis {
  const { texture: respelt, misspelt } = respell(written);
  const bare = phrasesOf(respelt, phraseWeights);
  const unmarked = bare.filter(({ end }) => end === 'inferred' || end === 'set');
  const texture = withPhraseEnds(respelt, new Set(unmarked.map(({ until }) => until)));
  const harmonies = readHarmonies(texture, bare, weights);
  const chords = chordsOf(texture, harmonies, bare);
  const { phrases, cadences } = cadencesOf(texture, bare, chords);
  return {
    texture,
    misspelt,
    phrases,
    keys: regionsOf(chords),
    chords,
    ornaments: ornamentsOf(texture, chords),
    cadences,
  };
}

function chordsOf(texture: Texture, harmonies: readonly Harmony[], phrases: readonly Phrase[]): Chord[] {
  const chords = harmonies.map((harmony, index): Chord => {
    const { at, until, root, type, inversion } = harmony;
    // A chord that closes a phrase is not named by what the next phrase begins with: a tierce before iv is a tonic.
    const end = phrases.find((phrase) => phrase.until > at)?.until ?? until;
    const following = harmonies
      .slice(index + 1, index + 4)
      .find((h) => h.at < end && (h.root !== root || h.type !== type));
    const key = keyOf(harmony);
    const members = membersAt(root, type);
    const bass = [members.root, members.third, members.fifth, members.seventh][inversion] ?? members.root;
    const { other } = harmony;
    return {
      index,
      at,
      until,
      key,
      roman: romanOf(key, root, type, inversion, following),
      root: members.root,
      bass,
      quality: CHORD_TYPES[type]!.quality,
      members,
      ...(other === undefined
        ? {}
        : {
            otherwise: {
              key: keyOf(other),
              roman: romanOf(keyOf(other), other.root, other.type, other.inversion, following),
            },
          }),
    };
  });
  return chords.map((chord, i) => {
    const sixFour = sixFourKind(texture, chord, chords[i - 1], chords[i + 1]);
    return sixFour === undefined ? chord : { ...chord, sixFour };
  });
}

function keyOf({ tonic, mode }: Pick<Harmony, 'tonic' | 'mode'>): Key {
  return { tonic: noteNameAtFifths(tonic), mode };
}

/** Key regions without holes: a key lasts until the next begins. */
function regionsOf(chords: readonly Chord[]): KeyRegion[] {
  const regions: KeyRegion[] = [];
  for (const chord of chords) {
    const last = regions.at(-1);
    if (last !== undefined && sameKey(last.key, chord.key))
      regions[regions.length - 1] = { ...last, until: chord.until };
    else {
      if (last !== undefined) regions[regions.length - 1] = { ...last, until: chord.at };
      regions.push({ from: chord.at, until: chord.until, key: chord.key });
    }
  }
  return regions;
}
