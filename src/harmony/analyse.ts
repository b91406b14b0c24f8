/** Reads the harmony of a texture: phrases, keys, chords, ornaments and cadences. */
import { noteNameAtFifths } from '../score/pitch.ts';
import { type Texture, withPhraseEnds } from '../score/texture.ts';
import type { Analysis, Chord, Key, KeyRegion, Phrase, Roman, SecondReading } from './analysis.ts';
import { CHORD_TYPES, membersAt } from './chord-types.ts';
import { sameKey } from './key.ts';
import { cadencesOf } from './reading/cadences.ts';
import { type Learnt, readHarmonies } from './reading/harmonies.ts';
import type { Doubt, Harmony } from './reading/harmony.ts';
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
 * @param learnt what the reading weighs by; what is committed unless a bench has learnt another
 * @param phraseWeights what phrase ends are weighed by where none is marked; likewise
 */
export function analyse(written: Texture, learnt?: Learnt, phraseWeights?: PhraseWeights): Analysis {
  const { texture: respelt, misspelt } = respell(written);
  const bare = phrasesOf(respelt, phraseWeights);
  const unmarked = bare.filter(({ end }) => end === 'inferred' || end === 'set');
  const texture = withPhraseEnds(respelt, new Set(unmarked.map(({ until }) => until)));
  const { harmonies, doubts } = readHarmonies(texture, bare, learnt);
  const chords = chordsOf(texture, harmonies, bare);
  const { phrases, cadences } = cadencesOf(texture, bare, chords);
  return {
    texture,
    misspelt,
    phrases,
    keys: regionsOf(chords),
    chords,
    seconds: secondReadingsOf(harmonies, doubts, bare),
    ornaments: ornamentsOf(texture, chords),
    cadences,
  };
}

function chordsOf(texture: Texture, harmonies: readonly Harmony[], phrases: readonly Phrase[]): Chord[] {
  const chords = harmonies.map((harmony, index): Chord => {
    const { at, until, root, type, inversion, sure } = harmony;
    const key = keyOf(harmony);
    const members = membersAt(root, type);
    const bass = [members.root, members.third, members.fifth, members.seventh][inversion] ?? members.root;
    return {
      index,
      at,
      until,
      key,
      roman: romanOf(key, root, type, inversion, followingOf(harmonies, index, phrases)),
      root: members.root,
      bass,
      quality: CHORD_TYPES[type]!.quality,
      members,
      sure,
    };
  });
  return chords.map((chord, i) => {
    const sixFour = sixFourKind(texture, chord, chords[i - 1], chords[i + 1]);
    return sixFour === undefined ? chord : { ...chord, sixFour };
  });
}

/** The harmony that helps to name the one at an index: of those soon after it the first that differs. */
function followingOf(
  harmonies: readonly Harmony[],
  index: number,
  phrases: readonly Phrase[],
): Harmony | undefined {
  const { at, until, root, type } = harmonies[index]!;
  // A chord that closes a phrase is not named by what the next phrase begins with: a tierce before iv is a tonic.
  const end = phrases.find((phrase) => phrase.until > at)?.until ?? until;
  return harmonies
    .slice(index + 1, index + 4)
    .find((h) => h.at < end && (h.root !== root || h.type !== type));
}

function secondReadingsOf(
  harmonies: readonly Harmony[],
  doubts: readonly Doubt[],
  phrases: readonly Phrase[],
): SecondReading[] {
  let first = 0;
  return doubts.flatMap((doubt) => {
    while (first < harmonies.length && harmonies[first]!.at < doubt.at) first++;
    const key = keyOf(doubt);
    const chords: { index: number; roman: Roman }[] = [];
    for (let index = first; index < harmonies.length && harmonies[index]!.at < doubt.until; index++) {
      const { root, type, inversion } = doubt.chord ?? harmonies[index]!;
      chords.push({
        index,
        roman: romanOf(key, root, type, inversion, followingOf(harmonies, index, phrases)),
      });
    }
    return chords.length === 0 ? [] : [{ from: doubt.at, until: doubt.until, key, chords }];
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
